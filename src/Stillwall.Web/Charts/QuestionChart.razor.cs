using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Stillwall.Figures;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Charts;

/// <summary>One question as a chart: the answer in a sentence, the lines with their labels, the cross-hair, and the same as a table and as files.</summary>
/// <remarks>A chart is sent to the page when its reference changes; while one is being painted only the latest waits.</remarks>
public sealed partial class QuestionChart
{
    private readonly string id = $"chart-{Guid.NewGuid():N}";
    private readonly HashSet<string> hidden = [];
    private ElementReference plot,
        read;
    private IJSObjectReference? module,
        drawn;
    private LatestOnly<Shown>? latest;
    private (Chart Chart, Chart? Former, int Toggled)? sent;
    private bool asTable,
        gone;
    private int toggled;

    /// <summary>What is drawn.</summary>
    [Parameter]
    [EditorRequired]
    public required Chart Chart { get; set; }

    /// <summary>The state before the last change, drawn as a pencil line; null draws none.</summary>
    [Parameter]
    public Chart? Former { get; set; }

    /// <summary>What the pencil line is called.</summary>
    [Parameter]
    public string FormerName { get; set; } = ChartTexts.Before;

    /// <summary>Whether a newer state is being computed.</summary>
    [Parameter]
    public bool Stale { get; set; }

    /// <summary>What stands instead of the chart's title, such as a choice of questions.</summary>
    [Parameter]
    public RenderFragment? Heading { get; set; }

    /// <summary>Where the chart is had as a file, without its name; null offers none.</summary>
    [Parameter]
    public string? FilesAt { get; set; }

    private Chart Combined => FormerState.Of(Chart, Former, FormerName);

    // What is downloaded has the pencil line where the chart shows it.
    private bool IsPencilled => !hidden.Contains("pencil") && Combined.Series.Any(s => s.Role == StyleRole.Pencil);

    private IReadOnlyList<(string Key, string Name)> Toggles =>
        [.. Combined.Series.Select((s, i) => (Key: ChartPacket.KeyOf(s, i), Name: NameOf(s))).Where(t => t.Key != "main").DistinctBy(t => t.Key)];

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        gone = true;
        try
        {
            if (drawn is not null)
            {
                await drawn.InvokeVoidAsync("dispose");
                await drawn.DisposeAsync();
            }

            if (module is not null)
            {
                await module.DisposeAsync();
            }
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and its chart with it.
        }
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            latest = new LatestOnly<Shown>(Send);
            module = await Script.InvokeAsync<IJSObjectReference>("import", "./client/chart.js");
            drawn = await module.InvokeAsync<IJSObjectReference>(
                "mount",
                plot,
                read,
                new
                {
                    crossHair = ChartTexts.CrossHair,
                    band = ChartTexts.Band,
                    to = ChartTexts.To,
                    before = ChartTexts.Before,
                },
                Figured.Pattern
            );
        }

        if (drawn is not null && latest is not null && !gone && !SameAsSent())
        {
            sent = (Chart, Former, toggled);
            await latest.Offer(new Shown(ChartPacket.Of(Combined), [.. hidden]));
        }
    }

    private bool SameAsSent() => sent is { } s && ReferenceEquals(s.Chart, Chart) && ReferenceEquals(s.Former, Former) && s.Toggled == toggled;

    private async Task Send(Shown next)
    {
        try
        {
            if (!gone)
            {
                await drawn!.InvokeVoidAsync("draw", next.Packet.Layout, next.Packet.Points, next.Hidden);
            }
        }
        catch (Exception e) when (e is JSDisconnectedException or ObjectDisposedException)
        {
            gone = true;
        }
    }

    private void Toggle(string key, bool on)
    {
        toggled++;
        _ = on ? hidden.Remove(key) : hidden.Add(key);
    }

    private void ShowTable(bool on) => asTable = on;

    private static string NameOf(ChartSeries series) =>
        series.Name.Length > 0 ? series.Name
        : series.Role == StyleRole.Pencil ? ChartTexts.Before
        : ChartTexts.BandOfDoubt;

    private sealed record Shown(ChartPacket Packet, string[] Hidden);
}
