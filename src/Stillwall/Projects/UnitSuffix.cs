namespace Stillwall.Projects;

/// <summary>The unit that a property's name ends in: <c>BuildWidthM</c> is a build width in metres.</summary>
internal static class UnitSuffix
{
    // Longest first, so that M3S is not read as S.
    internal static readonly (string Suffix, Dimension Dimension)[] Table =
    [
        ("PaSM3", Dimension.AcousticResistance),
        ("NPerM", Dimension.Stiffness),
        ("MPerN", Dimension.Compliance),
        ("KgM3", Dimension.Density),
        ("KgM2", Dimension.SurfaceDensity),
        ("M3S", Dimension.VolumeFlow),
        ("KgS", Dimension.MechanicalResistance),
        ("JKg", Dimension.SpecificHeat),
        ("Ohm", Dimension.Resistance),
        ("Deg", Dimension.Angle),
        ("TM", Dimension.ForceFactor),
        ("NM", Dimension.Torque),
        ("M2", Dimension.Area),
        ("M3", Dimension.Volume),
        ("Kg", Dimension.Mass),
        ("Hz", Dimension.Frequency),
        ("Pa", Dimension.Pressure),
        ("Db", Dimension.Level),
        ("M", Dimension.Length),
        ("S", Dimension.Time),
        ("W", Dimension.Power),
        ("H", Dimension.Inductance),
        ("C", Dimension.Temperature),
        ("K", Dimension.TemperatureDifference),
        ("N", Dimension.Force),
    ];

    /// <summary>Splits a property's name into what it is and the unit it is held in.</summary>
    /// <returns>The stem, and the kind of quantity; the whole name and none where it ends in no unit.</returns>
    public static (string Stem, Dimension Dimension) Split(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        foreach (var (suffix, dimension) in Table)
        {
            if (name.Length > suffix.Length && name.EndsWith(suffix, StringComparison.Ordinal) && IsStem(name[..^suffix.Length]))
            {
                return (name[..^suffix.Length], dimension);
            }
        }

        return (name, Dimension.None);
    }

    // The letter before a suffix ends a word: lower case or a digit.
    private static bool IsStem(string stem) => char.IsLower(stem[^1]) || char.IsDigit(stem[^1]);
}
