using Microsoft.AspNetCore.Components.Server.Circuits;

namespace Stillwall.Web.Store;

/// <summary>Lets a page's desk rest while its browser is not connected.</summary>
internal sealed class DeskAttendant(Desk desk) : CircuitHandler
{
    public override Task OnConnectionDownAsync(Circuit circuit, CancellationToken cancellationToken)
    {
        desk.Rest(true);
        return Task.CompletedTask;
    }

    public override Task OnConnectionUpAsync(Circuit circuit, CancellationToken cancellationToken)
    {
        desk.Rest(false);
        return Task.CompletedTask;
    }
}
