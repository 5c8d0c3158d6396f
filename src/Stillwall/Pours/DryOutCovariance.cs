using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace Stillwall.Pours;

/// <summary>Covariance of dry mass, excess and time constant of a fit through weighings.</summary>
/// <param name="Free">Weighings beyond the three that the fit takes.</param>
/// <remarks>Source: Gauss–Newton covariance s²(JᵀJ)⁻¹, elementary statistics. Student's t for 95 %.</remarks>
internal sealed record DryOutCovariance(Matrix<double> Matrix, int Free)
{
    /// <summary>Half the 95 % band of a sum of the three with these factors.</summary>
    internal double Doubt(double dry, double excess, double timeConstant)
    {
        var slopes = Vector<double>.Build.Dense([dry, excess, timeConstant]);
        return StudentT.InvCDF(0, 1, Free, 0.975) * Math.Sqrt(slopes * Matrix * slopes);
    }

    /// <summary>From what the fit leaves over; null for three weighings.</summary>
    internal static DryOutCovariance? Of(IReadOnlyList<WeighIn> weighIns, double excess, double tau, double squares)
    {
        var free = weighIns.Count - 3;
        if (free < 1)
        {
            return null;
        }

        var slopes = Matrix<double>.Build.Dense(
            weighIns.Count,
            3,
            (i, k) =>
            {
                var t = (weighIns[i].TimeDays - weighIns[0].TimeDays) / tau;
                return k switch
                {
                    0 => 1,
                    1 => Math.Exp(-t),
                    _ => excess * Math.Exp(-t) * t / tau,
                };
            }
        );
        return new DryOutCovariance(slopes.TransposeThisAndMultiply(slopes).Inverse() * (squares / free), free);
    }
}
