using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;
using Stillwall.Appraisals.Formulas;
using Stillwall.Cabinets;
using Stillwall.Materials;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Tests.Cabinets;

public sealed class BoxFiguresTests
{
    private static readonly Aim Aim = new() { LowestHz = 32, LevelDb = 93 };
    private static readonly Amplifier Amplifier = new() { PowerW = 120, RatedLoadOhm = 4 };

    // Worked by hand: α = 24/12 = 2, fc = 30√3, Qtc = Qts√3 with Qts = 5.5·0.475/5.975. At 32 Hz stiffness rules: 21.9 V push with
    // 10.36·21.9/3.55 = 64 N on 3/0.37 = 8.1 N/mm, 8 mm and thus less than the 12 mm the cone has, and the coil stands √(200·4) = 28 V.
    [Fact]
    public void Figures_of_an_empty_airtight_box_are_those_worked_by_hand()
    {
        var figures = BoxFigures.Of(System(0.012, null), Aim, Amplifier, 0.28);
        Assert.Equal(51.9615, figures.SystemResonanceHz!.Value, 4);
        Assert.Equal(0.437238 * Math.Sqrt(3), figures.SystemQ!.Value, 5);
        Assert.Equal(figures.SystemQ!.Value, figures.SystemQFilled!.Value, 9);
        Assert.Equal(343.2 / 0.56, figures.LowestAirModeHz!.Value, 9);
        Assert.Null(figures.LeakQ);
        Assert.Null(figures.MaxSplAtSeatDb);
        Assert.Equal(LimitedBy.Amplifier, figures.LimitedByAtLowest);
    }

    [Fact]
    public void At_the_seat_maximum_and_power_follow_the_transfer_of_the_room()
    {
        var box = System(0.012, null);
        var (open, seated) = (BoxFigures.Of(box, Aim, Amplifier), BoxFigures.Of(box, Aim, Amplifier, null, 4));
        Assert.Equal(open.MaxSplAtLowestDb, seated.MaxSplAtLowestDb);
        Assert.Equal(open.MaxSplAtLowestDb!.Value + (20 * Math.Log10(2)) + 4, seated.MaxSplAtSeatDb!.Value, 9);
        Assert.Equal((20 * Math.Log10(2)) + 4, 10 * Math.Log10(open.PowerNeededW!.Value / seated.PowerNeededW!.Value), 9);
    }

    [Fact]
    public void What_is_not_stated_leaves_the_figures_unknown_and_the_others_known()
    {
        var figures = BoxFigures.Of(System(0.012, null), null, null);
        Assert.Equal((null, null, null), (figures.MaxSplAtLowestDb, figures.LimitedByAtLowest, figures.PowerNeededW));
        Assert.True(figures.F3Hz > 0);
        Assert.NotNull(BoxFigures.Of(System(0.012, null), Aim, new Amplifier { RatedLoadOhm = 4 }).PowerNeededW);
    }

    [Fact]
    public void Fibre_leak_and_a_second_driver_act_as_the_contract_says()
    {
        var cabinet = new Cabinet
        {
            DriverCount = 2,
            Fill = new Fill { MassKg = 0.3 },
            Leak = new Leak { ResistancePaSM3 = 210000 },
        };
        var figures = BoxFigures.Of(System(0.024, cabinet), Aim, Amplifier);
        Assert.Equal(figures.FillFactor!.Value * (0.024 - (0.3 / 1380)), figures.EffectiveVolumeM3!.Value, 12);
        Assert.Equal(30 * Math.Sqrt(1 + (0.048 / figures.EffectiveVolumeM3!.Value)), figures.SystemResonanceHz!.Value, 9);
        Assert.True(figures.SystemQFilled < figures.SystemQ);
        Assert.Equal(
            2 * Math.PI * figures.SystemResonanceHz!.Value * figures.EffectiveVolumeM3!.Value / Air.Reference.BulkModulusPa * 210000,
            figures.LeakQ!.Value,
            9
        );
    }

    [Fact]
    public void A_port_without_its_size_and_a_box_without_air_are_named_as_missing()
    {
        Assert.Equal(["cabinet.port.length", "cabinet.port.area"], Resolve(0.012, new Cabinet { Port = new Port() }).Missing);
        Assert.Equal(["box.effective_volume_m3"], Resolve(-0.001, null).Missing);
        Assert.Null(Resolve(-0.001, null).System);
    }

    // Worked by hand: a tube of 50 mm radius loses 0.8488·50 + 0.6133·50 = 73.1 mm to its ends.
    [Fact]
    public void A_port_is_printed_shorter_than_it_acts()
    {
        var port = new Port { DiameterM = 0.1, LengthM = 0.25 };
        Assert.Equal(0.1769, BoxFigures.Of(System(0.05, new Cabinet { Port = port }), null, null).PortPrintLengthM!.Value, 4);
        Assert.Null(PortSize.PrintLengthM(0.05, Math.PI * 0.0025));
    }

    [Fact]
    public void Every_result_names_a_formula_of_the_catalogue()
    {
        var known = typeof(Formula)
            .Assembly.GetTypes()
            .Where(t => t.Namespace == typeof(Formula).Namespace)
            .SelectMany(t => (IEnumerable<Formula>?)t.GetProperty("All", BindingFlags.NonPublic | BindingFlags.Static)?.GetValue(null) ?? [])
            .ToList();
        Assert.Equal(known.Count, known.Select(f => f.Id).Distinct().Count());
        var named = typeof(BoxFigures)
            .Assembly.GetTypes()
            .Where(t => t.Namespace is "Stillwall.Cabinets" or "Stillwall.Drivers")
            .SelectMany(t => t.GetProperties())
            .Select(p => p.GetCustomAttribute<ComputedByAttribute>()?.Formula)
            .OfType<string>()
            .ToList();
        Assert.True(named.Count > 30);
        Assert.Empty(named.Except(known.Select(f => f.Id)));
    }

    [Fact]
    public void Results_are_written_under_the_keys_that_scripts_rely_on()
    {
        string[] box =
        [
            "net_volume_m3",
            "effective_volume_m3",
            "fill_factor",
            "system_resonance_hz",
            "system_q",
            "f3_hz",
            "f10_hz",
            "response_peak_db",
            "reference_efficiency",
            "sensitivity_db",
            "leak_q",
            "lowest_air_mode_hz",
            "max_spl_at_lowest_db",
            "max_spl_at_seat_db",
            "limited_by_at_lowest",
            "power_needed_w",
        ];
        string[] curve =
        [
            "frequency_hz",
            "spl_db",
            "phase_deg",
            "excursion_peak_mm",
            "box_pressure_pa_rms",
            "impedance_ohm",
            "impedance_phase_deg",
            "group_delay_ms",
            "max_spl_db",
            "port_speed_m_s",
            "radiator_excursion_mm",
        ];
        Assert.Empty(box.Except(KeysOf<BoxFigures>()));
        Assert.Equal(curve, KeysOf<CurvePoint>());
        Assert.Contains("leak_resistance_pa_s_m3", KeysOf<HoldTestResult>());
    }

    private static IEnumerable<string> KeysOf<T>() =>
        typeof(T)
            .GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Select(p => p.GetCustomAttribute<JsonPropertyNameAttribute>()?.Name ?? JsonNamingPolicy.SnakeCaseLower.ConvertName(p.Name));

    private static BoxSystem System(double netVolume, Cabinet? cabinet) => Resolve(netVolume, cabinet).System!;

    private static BoxSystemResolution Resolve(double netVolume, Cabinet? cabinet) =>
        BoxSystem.Of(SampleDrivers.Dunlin, netVolume, cabinet, new Measured(), Air.Reference);
}
