using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Stillwall.Appraisals;
using Stillwall.Parts;
using Stillwall.Projects;
using Stillwall.Web.Charts;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Viewer;

/// <summary>The printed parts in their places, to be turned, exploded, cut, and asked for their figures.</summary>
/// <remarks>The 3D library is loaded when the view is first shown. The parts are drawn anew when the reference of <see cref="Facts"/> changes.</remarks>
public sealed partial class PartsViewer
{
    private static readonly (string Key, string Name)[] Looks =
    [
        ("corner", ViewerTexts.Corner),
        ("front", ViewerTexts.Front),
        ("right", ViewerTexts.Right),
        ("above", ViewerTexts.Above),
        ("behind", ViewerTexts.Behind),
    ];

    private static readonly (string Key, string Name)[] Axes =
    [
        ("none", ViewerTexts.Uncut),
        ("width", ViewerTexts.AlongDepth),
        ("depth", ViewerTexts.AcrossWidth),
        ("height", ViewerTexts.AcrossHeight),
    ];

    private ElementReference canvas;
    private IJSObjectReference? module,
        view;
    private DotNetObjectReference<PartsViewer>? self;
    private LatestOnly<Facts>? latest;
    private LatestOnly<Sent>? moves;
    private Facts? asked;
    private int? count;
    private string axis = "none";
    private double apart,
        place = 50;
    private bool isLoading = true,
        hasNoView,
        gone;
    private string? picked;
    private string? given;

    /// <summary>Everything computed from the project.</summary>
    [Parameter]
    [EditorRequired]
    public required Facts Facts { get; set; }

    /// <summary>Where the parts of that project are had as bytes.</summary>
    [Parameter]
    [EditorRequired]
    public required string MeshesAt { get; set; }

    /// <summary>Name of the part that is marked; null for none.</summary>
    [Parameter]
    public string? Part { get; set; }

    /// <summary>Told which part was picked; null for none.</summary>
    [Parameter]
    public EventCallback<string?> PartChanged { get; set; }

    // The figures are the appraisal's, as in the table beside it; the drawing's own differ from them by less than a hundredth.
    private IReadOnlyList<PartFigures>? Parts { get; set; }

    private PartFigures? Shown => Parts?.FirstOrDefault(p => p.Name == picked);

    private string? Said =>
        hasNoView ? ViewerTexts.NoView
        : isLoading ? ViewerTexts.Drawing
        : count == 0
            ? Facts.Geometry is null ? ViewerTexts.NoCabinet
                : ViewerTexts.Failed
        : null;

    /// <summary>A part was picked on the screen.</summary>
    /// <param name="name">Its name; null for none.</param>
    [JSInvokable]
    public Task Picked(string? name)
    {
        picked = name;
        StateHasChanged();
        return PartChanged.InvokeAsync(name);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        gone = true;
        self?.Dispose();
        try
        {
            if (view is not null)
            {
                await view.InvokeVoidAsync("dispose");
                await view.DisposeAsync();
            }

            if (module is not null)
            {
                await module.DisposeAsync();
            }
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and its view with it.
        }
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        // What was given before says nothing: a part may have been chosen here since, of which the page has not been told yet.
        if (Part == given)
        {
            return;
        }

        given = Part;
        if (Part != picked)
        {
            picked = Part;
            await Tell("pick", Part);
        }
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            (latest, moves, self) = (new LatestOnly<Facts>(Load), new LatestOnly<Sent>(s => Tell(s.Name, s.Values)), DotNetObjectReference.Create(this));
            module = await Script.InvokeAsync<IJSObjectReference>("import", "./client/viewer.js");
            view = await module.InvokeAsync<IJSObjectReference?>("mount", canvas, self);
            hasNoView = view is null;
            StateHasChanged();
        }

        if (view is not null && latest is not null && !ReferenceEquals(asked, Facts))
        {
            asked = Facts;
            await latest.Offer(Facts);
        }
    }

    // Drawing takes a while: it is done here, so that the answer to the browser's request lies ready and the page goes on.
    private async Task Load(Facts facts)
    {
        isLoading = true;
        StateHasChanged();
        var drawn = await Task.Run(() => AssemblyMeshes.Of(facts));
        Parts = drawn is null ? null : [.. facts.Parts.Where(p => drawn.Parts.Any(d => d.Name == p.Name))];
        count = drawn is null ? 0 : await Call<int>("load", MeshesAt);
        isLoading = false;
        if (!gone)
        {
            StateHasChanged();
        }
    }

    private Task Spread(object? value)
    {
        apart = Number(value);
        return moves?.Offer(new Sent("spread", [apart / 100])) ?? Task.CompletedTask;
    }

    private Task CutAlong(object? value)
    {
        axis = value as string ?? "none";
        return Tell("cut", axis, place / 100);
    }

    private Task CutAt(object? value)
    {
        place = Number(value);
        return moves?.Offer(new Sent("cut", [axis, place / 100])) ?? Task.CompletedTask;
    }

    private async Task Choose(string? name)
    {
        var chosen = picked = name is { Length: > 0 } ? name : null;
        await Tell("pick", chosen);
        await PartChanged.InvokeAsync(chosen);
    }

    private async Task Tell(string what, params object?[] values) => await Call<object?>(what, values);

    private async Task<T?> Call<T>(string what, params object?[] values)
    {
        try
        {
            return view is null || gone ? default : await view.InvokeAsync<T>(what, values);
        }
        catch (Exception e) when (e is JSDisconnectedException or ObjectDisposedException)
        {
            gone = true;
            return default;
        }
    }

    private static double Number(object? value) =>
        double.TryParse(value as string, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : 0;

    private IEnumerable<(string Text, string? Result)> FiguresOf(PartFigures part)
    {
        var (show, at) = (Facts.Show, $"parts[{Facts.Parts.Index().First(p => p.Item == part).Index}]");
        IEnumerable<(string?, string?)> all =
        [
            .. part.SizeM.Select((m, axis) => ((string?)show.Length(m), (string?)$"{at}.size_m[{axis}]")),
            (part.MassKg is { } kg ? show.Mass(kg) : null, $"{at}.mass_kg"),
            (part.PrintSeconds is { } s ? ViewerTexts.Hours(s / Units.Hour) : null, $"{at}.print_seconds"),
            (
                part.Fits is { } fits
                    ? fits
                        ? ViewerTexts.Fits
                        : ViewerTexts.TooLarge
                    : null,
                null
            ),
        ];
        return all.Where(f => f.Item1 is not null).Select(f => (f.Item1!, f.Item2));
    }

    private sealed record Sent(string Name, object?[] Values);
}
