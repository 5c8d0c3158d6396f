using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Explaining;
using Stillwall.Cabinets;
using Stillwall.Projects;

namespace Stillwall.Web.Store;

/// <summary>Of which number somebody asks why.</summary>
/// <param name="Of">
/// Path of a result or id of a finding as the command line takes it, or beside the appraisal: <c>kinds[1].finished_kg</c>, <c>lightest.saved_kg</c>, <c>answer.first_band_hz</c>,
/// <c>driver.qts</c>, <c>curve.max_spl_db</c>, <c>proof.tap[2]</c>.
/// </param>
/// <param name="Name">What it is called on the page.</param>
/// <param name="Driver">Candidate in whose place it is asked for; null for the project's own driver.</param>
internal sealed record WhyQuestion(string Of, string Name, string? Driver)
{
    // Where no lowest note is stated.
    private const double DefaultHz = 30, DefaultVolts = 2.83;

    /// <summary>The explanation; null where nothing is known of it.</summary>
    /// <param name="project">The open project.</param>
    /// <param name="state">The state that is shown.</param>
    internal Explanation? Answer(OpenProject project, Snapshot state)
    {
        var facts = Driver is null ? state.Plan.Facts : state.Plan.Facts.With(state.Project with { Driver = new DriverChoice(Driver, null) });
        try
        {
            return Of.Split(['[', '.'], 2)[0] switch
            {
                "kinds" => Figure(facts, state.Plan.WallChoice.Kinds[Index], null),
                "lightest" => Figure(facts, state.Plan.WallChoice.Lightest, null),
                "answer" => Figure(facts, Polite(facts), Polite),
                "curve" => Figure(facts, Point(facts), Point),
                "driver" when facts.Driver is { } driver && Of == "driver.qts" => Why.Of(facts, driver, nameof(Drivers.Driver.Qts), f => f.Driver),
                "proof" => project.Proofs.Of(Of[6..Of.IndexOf('[', StringComparison.Ordinal)])?.Figures[Index].Why,
                _ => Why.Of(facts, Of),
            };
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private int Index => int.Parse(Of[(Of.IndexOf('[', StringComparison.Ordinal) + 1)..Of.IndexOf(']', StringComparison.Ordinal)], CultureInfo.InvariantCulture);

    // The line of a chart at the lowest note, at the voltage of the amplifier's full power.
    private static CurvePoint? Point(Facts facts) => facts.System is not { } system ? null : ResponseCurve.PointAt(
        system.Network, MaximumLevel.LimitsOf(system.Network.Driver, system.Network.SecondCone, facts.Project.Brief.Amplifier), facts.Project.Brief.Aim?.LowestHz ?? DefaultHz,
        facts.Project.Brief.Amplifier is { PowerW: { } power, RatedLoadOhm: { } load } ? Math.Sqrt(power * load) : DefaultVolts);

    private static QuietAnswer? Polite(Facts facts) => QuietAnswer.Of(facts.Project, facts.Quiet);

    private Explanation? Figure(Facts facts, object? record, Func<Facts, object?>? again) =>
        record?.GetType().GetProperties().FirstOrDefault(p => Of.EndsWith("." + ResultName(p.Name), StringComparison.Ordinal)) is { } property ? Why.Of(facts, record, property.Name, again) : null;

    private static string ResultName(string property) => System.Text.Json.JsonNamingPolicy.SnakeCaseLower.ConvertName(property);
}
