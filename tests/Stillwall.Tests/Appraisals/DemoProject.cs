using Stillwall.Projects;

namespace Stillwall.Tests.Appraisals;

/// <summary>The demo in samples/reading-room, written out in code; a test of the files' side holds the two together.</summary>
internal static class DemoProject
{
    internal static Project Project { get; } =
        new()
        {
            Schema = "stillwall.schema.json",
            FormatVersion = 1,
            Name = "Reading-room cabinet",
            Currency = "EUR",
            Budget = 420,
            DisplayUnits = DisplayUnits.Metric,
            PourDate = new DateOnly(2026, 11, 14),
            Brief = Brief,
            Drivers = "drivers.csv",
            Driver = new DriverChoice("Dunlin 8", null),
            Cabinet = Cabinet,
            Materials = new Stillwall.Projects.Materials
            {
                Skin = "petg",
                Cast = new Cast
                {
                    Mix = "plaster",
                    PowderPerWater = 1.5,
                    PotLifeS = 600,
                    BucketM3 = 0.005,
                    SoakS = 120,
                    StirS = 60,
                    PourRateM3S = 2e-3 / 60,
                    People = 1,
                    HoldDownKg = 4,
                },
            },
            Limits = new Limits { WallToConeDb = -30, HeatMarginK = 10 },
            Prices =
            [
                Priced("filament", 22, 1, Dimension.Mass),
                Priced("cast powder", 1.6, 1, Dimension.Mass),
                Priced("dust mask", 2.5, 1),
                Priced("pair of gloves", 1, 1),
                Priced("sealant", 7.5, 1),
                Priced("threaded insert", 6, 20),
                Priced("screw", 4, 20),
                Priced("gasket tape", 4.5, 5, Dimension.Length),
                Priced("terminal", 6.5, 1),
                Priced("cable", 1.2, 1, Dimension.Length),
                Priced("fill", 14, 0.5, Dimension.Mass),
                Priced("pad", 1.5, 1),
            ],
            Stock =
            [
                Stocked("driver", 1) with
                {
                    Note = "on the bench since the first measurement",
                },
                Stocked("filament", 4, Dimension.Mass),
                Stocked("cast powder", 6, Dimension.Mass),
                Stocked("dust mask", 3),
                Stocked("pair of gloves", 2),
                Stocked("sealant", 1) with
                {
                    BestBefore = new DateOnly(2027, 3, 1),
                },
                Stocked("threaded insert", 20),
                Stocked("screw", 20),
                Stocked("gasket tape", 5, Dimension.Length),
                Stocked("terminal", 1),
                Stocked("cable", 4, Dimension.Length),
                Stocked("fill", 0.5, Dimension.Mass),
                Stocked("pad", 4),
            ],
            Measured = new Measured { CoreModulusPa = 4.1e9 },
            Logbook =
            [
                new LogEntry
                {
                    Date = new DateOnly(2026, 11, 7),
                    Kind = "attempt",
                    Part = "wall coupon",
                    MassKg = 0.29,
                    Note = "filled without a void, no bulge to be felt, skins could not be prised off",
                },
            ],
        };

    private static Brief Brief =>
        new()
        {
            Printer = new Printer
            {
                BuildWidthM = 0.256,
                BuildDepthM = 0.256,
                BuildHeightM = 0.256,
                EdgeMarginM = 0.005,
                NozzleM = 0.0006,
                LayerM = 0.0003,
                Flow = 12,
                LayerPauseS = 4,
            },
            Spot = new Spot
            {
                WidthM = 0.42,
                HeightM = 0.52,
                DepthM = 0.43,
                ClearanceM = 0.02,
                PlugSpaceM = 0.05,
            },
            Aim = new Aim
            {
                LowestHz = 32,
                CrossoverHz = 95,
                LevelDb = 93,
                DistanceM = 2,
                SystemQ = 0.707,
                SystemQTolerance = 0.12,
            },
            Everyday = new Everyday
            {
                LevelDb = 62,
                Programme = "music",
                Hours = 2,
            },
            Amplifier = new Amplifier
            {
                PowerW = 120,
                RatedLoadOhm = 4,
                MinimumLoadOhm = 3.2,
            },
            MainSpeakers = new MainSpeakers
            {
                CornerHz = 95,
                Q = 0.8,
                SensitivityDb = 85,
            },
            Air = new AirState { TemperatureC = 20, PressurePa = 101325 },
            Room = new Room
            {
                WidthM = 3.2,
                LengthM = 3.9,
                HeightM = 2.5,
                DecayTimeS = 0.5,
                PressureDecayTimeS = 2,
                CabinetAtM = [0.4, 0.35, 0.25],
                SeatAtM = [2.2, 2.9, 1.1],
            },
            Neighbour = new Neighbour
            {
                Partition = "brick-255-plastered",
                AreaM2 = 8,
                RoomVolumeM3 = 36,
                DecayTimeS = 0.5,
                Curve = "hearing-threshold",
                AllowanceDb = 0,
            },
        };

    private static Cabinet Cabinet =>
        new()
        {
            Outside = new Outside
            {
                WidthM = 0.244,
                DepthM = 0.33,
                HeightM = 0.244,
                CornerRadiusM = 0.03,
            },
            OuterSkinM = 0.002,
            CoreM = 0.012,
            InnerSkinM = 0.002,
            StrutPitchM = 0.04,
            Braces = 1,
            Openings = new Openings { TerminalM = 0.055, PourM = 0.035 },
            Fill = new Fill { MassKg = 0.19 },
            Leak = new Leak
            {
                GapM = 0.0001,
                LengthM = 0.7,
                DepthM = 0.008,
            },
            Feet = new Feet { Kind = FeetKind.Pads, StiffnessNPerM = 9000 },
            Accents = new Accents { Rings = 3, Ratio = 1.4 },
        };

    private static Price Priced(string item, double cost, double amount, Dimension dimension = Dimension.Count) =>
        new()
        {
            Item = item,
            Cost = cost,
            Per = new Amount(amount, dimension),
        };

    private static Stock Stocked(string item, double amount, Dimension dimension = Dimension.Count) =>
        new() { Item = item, Amount = new Amount(amount, dimension) };
}
