using System.Security.Cryptography;
using System.Text;

namespace Stillwall.Files.Projects;

/// <summary>The turn to write one file, among the programs of this machine. A program that ends gives it back.</summary>
internal sealed class WriterTurn : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    private readonly Mutex? mutex;

    private WriterTurn(Mutex? mutex, bool isRefused) => (this.mutex, IsRefused) = (mutex, isRefused);

    /// <summary>Whether the turn is ours. Where the system gives none, a save is still whole, but two at once may keep each other's version.</summary>
    internal bool IsHeld => mutex is not null;

    /// <summary>Whether another program has it and would not let go.</summary>
    internal bool IsRefused { get; }

    internal static WriterTurn Take(string file)
    {
        Mutex? mutex = null;
        try
        {
            mutex = new Mutex(false, $"Global\\stillwall-{Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(file)))[..32]}");
            if (mutex.WaitOne(Patience))
            {
                return new WriterTurn(mutex, false);
            }

            mutex.Dispose();
            return new WriterTurn(null, true);
        }
        catch (AbandonedMutexException)
        {
            // The program that had it has ended; the turn is ours.
            return new WriterTurn(mutex, false);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or WaitHandleCannotBeOpenedException)
        {
            // The system gives no turns here.
        }

        mutex?.Dispose();
        return new WriterTurn(null, false);
    }

    public void Dispose()
    {
        mutex?.ReleaseMutex();
        mutex?.Dispose();
    }
}
