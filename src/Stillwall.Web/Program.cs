using System.Reflection;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.AspNetCore.DataProtection;
using Stillwall.Web;
using Stillwall.Web.Serving;
using Stillwall.Web.Store;

if (Start.Faults(args) is { } fault)
{
    Console.Error.WriteLine(fault);
    return 2;
}

var builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = Start.Settings(args), ContentRootPath = AppContext.BaseDirectory });
builder.WebHost.UseStaticWebAssets();
builder.WebHost.ConfigureKestrel(kestrel => (kestrel.Limits.MaxRequestBodySize, kestrel.AddServerHeader) = (Start.BodyLimit, false));
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddSingleton(services =>
{
    var settings = services.GetRequiredService<IConfiguration>();
    return new Workshop(settings["folder"], settings["project"], services.GetRequiredService<TimeProvider>());
});
builder.Services.AddScoped<Desk>();
builder.Services.AddScoped<CircuitHandler, DeskAttendant>();
builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
builder.Services.AddAntiforgery(options => options.SuppressXFrameOptionsHeader = true);
builder.Services.AddRazorComponents().AddInteractiveServerComponents(options => options.DisconnectedCircuitMaxRetained = 8);
builder.Services.AddResponseCompression(options => options.EnableForHttps = true);

// The keys of this page live as long as it does; the service that would keep some in the maker's home folder, and warn of it, has nothing to do.
foreach (
    var keeper in builder
        .Services.Where(s => s.ServiceType == typeof(IHostedService) && s.ImplementationType?.Assembly == typeof(EphemeralDataProtectionProvider).Assembly)
        .ToList()
)
{
    builder.Services.Remove(keeper);
}

var isOwnProgram = Assembly.GetEntryAssembly() == typeof(Program).Assembly;
var app = builder.Build();
if (isOwnProgram)
{
    // The page waits for the first figures: they are computed while the server starts.
    _ = Task.Run(app.Services.GetRequiredService<Workshop>().ComputeFirst);
}

app.Use(Gate.Pass);
app.UseResponseCompression();
app.UseAntiforgery();
app.MapStaticAssets();
app.MapProjectFiles();
app.MapRazorComponents<App>().AddInteractiveServerRenderMode(options => options.ContentSecurityFrameAncestorsPolicy = null);
app.Lifetime.ApplicationStarted.Register(() =>
{
    if (isOwnProgram)
    {
        Start.Announce(app.Urls.First(), app.Configuration);
    }
});

try
{
    app.Run();
    return 0;
}
catch (IOException e) when (e.InnerException is Microsoft.AspNetCore.Connections.AddressInUseException)
{
    Console.Error.WriteLine($"--urls: {e.Message.Split(": ")[0]}: another program listens there; another port, such as http://127.0.0.1:5311");
    return 3;
}
catch (Exception e) when (e is IOException or System.Net.Sockets.SocketException)
{
    Console.Error.WriteLine($"--urls: {app.Configuration["urls"]}: cannot be listened at ({e.Message}); another port, such as http://127.0.0.1:5311");
    return 3;
}

/// <summary>The program that serves the workshop page.</summary>
public partial class Program;
