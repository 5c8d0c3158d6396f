using Microsoft.AspNetCore.Mvc.Testing;
using Stillwall.Web.Store;

namespace Stillwall.Web.Tests;

/// <summary>The real program on a free port of this machine, with a folder of its own.</summary>
public sealed class Page : IDisposable
{
    private readonly Factory factory;

    public Page()
    {
        Folder = Directory.CreateTempSubdirectory("stillwall-page-").FullName;
        factory = new Factory(Folder);
        factory.UseKestrel(0);
        factory.StartServer();
        Address = factory.ClientOptions.BaseAddress;
    }

    public string Folder { get; }

    public Uri Address { get; }

    public string ProjectFolder => Path.Combine(Folder, "reading-room");

    internal Workshop Workshop => (Workshop)factory.Services.GetService(typeof(Workshop))!;

    /// <summary>Puts the demo back, whatever was done to it.</summary>
    public void Reset()
    {
        var sample = Path.Combine(Source.Root, "samples", "reading-room");
        _ = Workshop
            .Current()
            .Project!.Replace(
                null,
                File.ReadAllText(Path.Combine(sample, "stillwall.json")),
                File.ReadAllText(Path.Combine(sample, "drivers.csv")),
                "the demo again"
            );
    }

    public HttpClient Client() => new(new SocketsHttpHandler { AllowAutoRedirect = false }) { BaseAddress = Address };

    public void Dispose()
    {
        factory.Dispose();
        Directory.Delete(Folder, recursive: true);
    }

    private sealed class Factory(string folder) : WebApplicationFactory<Program>
    {
        protected override void ConfigureWebHost(IWebHostBuilder builder) => builder.UseSetting("folder", folder).UseEnvironment("Production");
    }
}
