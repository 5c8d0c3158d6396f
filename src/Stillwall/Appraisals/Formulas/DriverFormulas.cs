namespace Stillwall.Appraisals.Formulas;

/// <summary>Formulas of the driver.</summary>
internal static class DriverFormulas
{
    internal static IReadOnlyList<Formula> All { get; } =
    [
        new(
            "driver-mismatch",
            "Disagreement of a data sheet with itself",
            "stated/derived − 1, the derived value from fs, Qms, Qes, Vas, Re and Sd where stated",
            "relations of Small 1972, JAES 20(5) (from memory); order of precedence our choice",
            "exact relations; sheets often disagree by 10 % and more"
        ),
        new("total-q", "Total Q of the driver", "Qts = Qms Qes/(Qms + Qes)", "IEC 60268-5:2003 (from memory)", "exact"),
    ];
}
