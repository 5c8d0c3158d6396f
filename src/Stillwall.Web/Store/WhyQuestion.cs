using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Explaining;
using Stillwall.Appraisals.WallChoices;
using Stillwall.Cabinets;
using Stillwall.Neighbours.Rooms;
using Stillwall.Numerics;
using Stillwall.Projects;
using Stillwall.Proofs.Signals;
using Stillwall.Web.Proving;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Store;

/// <summary>Of which number somebody asks why.</summary>
/// <param name="Of">
/// Path of a result or id of a finding as the command line takes it, or beside the appraisal: <c>kinds[1].finished_kg</c>, <c>lightest.saved_kg</c>,
/// <c>answer.first_band_hz</c>, <c>driver.qts</c>, <c>curve.max_spl_db</c>, <c>proof.tap[2]</c>, <c>map[45].seat_over_mean_db</c>, <c>places[0.3 0.3
/// 0.25 2.2 2.9 1.1].unevenness_db</c>, <c>drive.voltage_v</c>; or a key of the project file, for what is stated.
/// </param>
/// <param name="Driver">Candidate in whose place it is asked for; null for the project's own driver.</param>
internal sealed record WhyQuestion(string Of, string Name, string? Driver)
{
    // Where no lowest note is stated.
    private const double DefaultHz = 30,
        DefaultVolts = 2.83;

    /// <summary>The explanation; null where nothing is known of it.</summary>
    internal Explanation? Answer(OpenProject project, Snapshot state)
    {
        var facts = Driver is null ? state.Plan.Facts : state.Plan.Facts.With(state.Project with { Driver = new DriverChoice(Driver, null) });
        try
        {
            return Stated(state)
                ?? Of.Split(['[', '.'], 2)[0] switch
                {
                    "kinds" => Property<WallKind>() is { } figure ? WallKinds.Explain(facts, state.Plan.WallChoice.Kinds[Index], figure) : null,
                    "lightest" => (state.Plan.WallChoice.Lightest, Property<LightestWall>()) is ({ } light, { } figure)
                        ? LightestWalls.Explain(facts, light, figure)
                        : null,
                    "answer" => (Polite(facts), Property<QuietAnswer>()) is ({ } answer, { } figure) ? Why.Of(facts, answer, figure, Polite) : null,
                    "curve" => (Point(facts), Property<CurvePoint>()) is ({ } point, { } figure) ? Why.Of(facts, point, figure, Point) : null,
                    "map" => (Map(facts), Property<RoomMap>()) is ({ } map, { } figure) ? Why.Of(facts, map, figure, Map) : null,
                    "places" => (Places(facts), Property<PlaceGain>()) is ({ } places, { } figure) ? Why.Of(facts, places, figure, Places) : null,
                    "drive" => (Drive(facts), Property<DriveBound>()) is ({ } bound, { } figure) ? Why.Of(facts, bound, figure, Drive) : null,
                    "driver" when facts.Driver is { } driver && Of == "driver.qts" => Why.Of(facts, driver, nameof(Drivers.Driver.Qts), f => f.Driver),
                    "proof" => project.Proofs.Of(Of[6..Of.IndexOf('[', StringComparison.Ordinal)])?.Figures[Index].Why?.Invoke(),
                    _ => Why.Of(facts, Of),
                };
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private int Index =>
        int.Parse(Of[(Of.IndexOf('[', StringComparison.Ordinal) + 1)..Of.IndexOf(']', StringComparison.Ordinal)], CultureInfo.InvariantCulture);

    // What stands in brackets, in numbers.
    private double[] Inside => [.. Of.Split('[', ']')[1].Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture))];

    private RoomMap? Map(Facts facts) => facts.Room is { } room ? RoomMap.Of(room, Inside[0], 1, 2) : null;

    // The room with cabinet and seat at other places.
    private PlaceGain? Places(Facts facts)
    {
        if ((facts.Room, Inside) is not ({ } room, [var cx, var cy, var cz, var sx, var sy, var sz]))
        {
            return null;
        }

        PlaceChoice At(RoomGeometry standing) => PlaceSearch.At(standing, room.Air, QuietTexts.HighestHz(facts.Project));
        return new PlaceGain(At(room.Geometry with { Cabinet = new(cx, cy, cz), Seat = new(sx, sy, sz) }), At(room.Geometry));
    }

    private static DriveBound? Drive(Facts facts) => ProofReader.Bound(facts);

    // The line of a chart at the lowest note, at the voltage of the amplifier's full power.
    private static CurvePoint? Point(Facts facts) =>
        facts.System is not { } system
            ? null
            : ResponseCurve.PointAt(
                system.Network,
                MaximumLevel.LimitsOf(system.Network.Driver, system.Network.PassiveRadiator, facts.Project.Brief.Amplifier),
                facts.Project.Brief.Aim?.LowestHz ?? DefaultHz,
                facts.Project.Brief.Amplifier is { PowerW: { } power, RatedLoadOhm: { } load } ? Math.Sqrt(power * load) : DefaultVolts
            );

    private static QuietAnswer? Polite(Facts facts) => QuietAnswer.Of(facts.Project, facts.Quiet);

    /// <summary>The key of the project file that it is; null for a result.</summary>
    internal string? Key => ProjectKeys.Find(Of) is not null ? Of : null;

    // What the maker states is said as beside its field.
    private Explanation? Stated(Snapshot state)
    {
        if (Key is not { } key || ProjectKeys.Find(key) is not { } field)
        {
            return null;
        }

        var (value, unit) = (ProjectKeys.Get(state.Project, key), Units.SiName(field.Dimension));
        return new Explanation(
            key,
            value as double?,
            unit,
            WhyTexts.StatedAs(key),
            [],
            FieldTexts.Source(state.States(key), value is not null, field.DefaultFrom, null)
        );
    }

    private string? Property<T>() =>
        typeof(T).GetProperties().FirstOrDefault(p => Of.EndsWith("." + UnderscoreNames.Of(p.Name), StringComparison.Ordinal))?.Name;
}
