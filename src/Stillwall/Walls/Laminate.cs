using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Walls;

/// <summary>One layer of a wall.</summary>
/// <param name="ThicknessM">Thickness, m.</param>
/// <param name="ModulusPa">Young's modulus, Pa.</param>
/// <param name="Poisson">Poisson's ratio, 0 to 0.49.</param>
/// <param name="DensityKgM3">Density, kg/m³.</param>
/// <param name="LossFactor">Loss factor.</param>
public sealed record Layer(double ThicknessM, double ModulusPa, double Poisson, double DensityKgM3, double LossFactor = 0.01)
{
    /// <summary>A layer of printed plastic at room temperature.</summary>
    /// <param name="thicknessM">Thickness, m.</param>
    /// <param name="skin">The plastic.</param>
    /// <returns>The layer.</returns>
    /// <remarks>Model: the material's figures as they are. Validity: room temperature. Source: as the material. Accuracy: as the material.</remarks>
    public static Layer Of(double thicknessM, SkinMaterial skin)
    {
        ArgumentNullException.ThrowIfNull(skin);
        return new Layer(thicknessM, skin.ModulusPa, skin.Poisson, skin.DensityKgM3, skin.LossFactor);
    }

    /// <summary>A layer of set cast.</summary>
    /// <param name="thicknessM">Thickness, m.</param>
    /// <param name="core">The cast.</param>
    /// <returns>The layer.</returns>
    /// <remarks>Model: the material's figures as they are. Validity: room temperature. Source: as the material. Accuracy: as the material.</remarks>
    public static Layer Of(double thicknessM, CoreMaterial core)
    {
        ArgumentNullException.ThrowIfNull(core);
        return new Layer(thicknessM, core.ModulusPa, core.Poisson, core.DensityKgM3, core.LossFactor);
    }
}

/// <summary>How a stack of layers bends, shears and turns.</summary>
/// <param name="StiffnessNm">Bending stiffness per width, N·m.</param>
/// <param name="LossFactor">Loss factor in bending, the layers' weighted by the energy that bending stores in each.</param>
/// <param name="ContractionNm">Bending stiffness across, that Poisson's ratio couples in, N·m.</param>
/// <param name="ShearNPerM">Shear stiffness per width, N/m.</param>
/// <param name="RotaryInertiaKg">Inertia against turning per area, kg·m²/m².</param>
public sealed record BendingStiffness(double StiffnessNm, double LossFactor, double ContractionNm, double ShearNPerM, double RotaryInertiaKg);

/// <summary>Stacks of layers: their stiffness when the layers are one, and when they slip.</summary>
public static class Laminate
{
    /// <summary>Stiffness of layers that are bonded to one another.</summary>
    /// <param name="layers">Layers from the outside in, at least one.</param>
    /// <returns>Stiffness and loss factor in bending.</returns>
    /// <exception cref="ArgumentException">No layers, or one with a figure out of range.</exception>
    /// <remarks>
    /// Model: plane sections stay plane; z̄ = ΣQtz/ΣQt, D = ΣQ[t³/12 + t(z − z̄)²], Q = E/(1 − ν²); shear stiffness D²/∫F²/G dz with F(z) = ∫Q(z −
    /// z̄) dz from the face, the shear that equilibrium asks for (5/6·Gt for one layer). Validity: thin against the panel, perfect bond.
    /// Source: classical laminate theory for isotropic layers, e.g. Reddy 2004, chapter 3 (from memory).
    /// Accuracy: exact for its model; layers of unlike Poisson's ratio bring an error below 0.5 %.
    /// </remarks>
    public static BendingStiffness Bonded(IReadOnlyList<Layer> layers)
    {
        var neutral = NeutralPlaneM(layers);
        var sums = Sum(layers, (layer, middle) => layer.ThicknessM * (layer.ThicknessM * layer.ThicknessM / 12 + (middle - neutral) * (middle - neutral)));
        return sums with { ShearNPerM = sums.StiffnessNm * sums.StiffnessNm / ShearFlexibility(layers, neutral) };
    }

    /// <summary>Stiffness of layers that slip on one another, each bending about its own middle.</summary>
    /// <param name="layers">Layers from the outside in, at least one.</param>
    /// <returns>Stiffness and loss factor in bending.</returns>
    /// <exception cref="ArgumentException">No layers, or one with a figure out of range.</exception>
    /// <remarks>
    /// Model: D = ΣQt³/12, shear stiffness Σ5/6·Gt, one rotation for all; the layers share the deflection and hand on no shear. Validity: skins that
    /// are not keyed, or that shrinkage has parted.
    /// Source: the same theory without the transfer term. Accuracy: a lower bound; friction is left out.
    /// </remarks>
    public static BendingStiffness Slipping(IReadOnlyList<Layer> layers)
    {
        Check(layers);
        return Sum(layers, (layer, _) => Math.Pow(layer.ThicknessM, 3) / 12) with { ShearNPerM = layers.Sum(l => 5.0 / 6 * ShearModulusPa(l) * l.ThicknessM) };
    }

    /// <summary>Distance of the plane that neither stretches nor shortens from the outer face.</summary>
    /// <param name="layers">Layers from the outside in, at least one.</param>
    /// <returns>Distance, m.</returns>
    /// <exception cref="ArgumentException">No layers, or one with a figure out of range.</exception>
    /// <remarks>
    /// Model: z̄ = ΣQtz/ΣQt. Validity: bonded layers. Source: as <see cref="Bonded"/>. Accuracy: exact for its model.
    /// </remarks>
    public static double NeutralPlaneM(IReadOnlyList<Layer> layers)
    {
        Check(layers);
        double moment = 0,
            total = 0,
            face = 0;
        foreach (var layer in layers)
        {
            var stretch = PlaneModulusPa(layer) * layer.ThicknessM;
            moment += stretch * (face + layer.ThicknessM / 2);
            total += stretch;
            face += layer.ThicknessM;
        }

        return moment / total;
    }

    /// <summary>Mass of the stack per area.</summary>
    /// <param name="layers">Layers, at least one.</param>
    /// <returns>Mass per area, kg/m².</returns>
    /// <exception cref="ArgumentException">No layers, or one with a figure out of range.</exception>
    /// <remarks>Model: Σρt. Validity: any. Source: elementary. Accuracy: exact.</remarks>
    public static double SurfaceDensityKgM2(IReadOnlyList<Layer> layers)
    {
        Check(layers);
        return layers.Sum(l => l.DensityKgM3 * l.ThicknessM);
    }

    private static double PlaneModulusPa(Layer layer) => layer.ModulusPa / (1 - layer.Poisson * layer.Poisson);

    private static double ShearModulusPa(Layer layer) => layer.ModulusPa / (2 * (1 + layer.Poisson));

    // Second moments of the layers, weighted by stiffness, contraction, loss and density.
    private static BendingStiffness Sum(IReadOnlyList<Layer> layers, Func<Layer, double, double> second)
    {
        double bends = 0,
            contracts = 0,
            loses = 0,
            turns = 0,
            face = 0;
        foreach (var layer in layers)
        {
            var moment = second(layer, face + layer.ThicknessM / 2);
            bends += PlaneModulusPa(layer) * moment;
            contracts += layer.Poisson * PlaneModulusPa(layer) * moment;
            loses += layer.LossFactor * PlaneModulusPa(layer) * moment;
            turns += layer.DensityKgM3 * moment;
            face += layer.ThicknessM;
        }

        return new BendingStiffness(bends, loses / bends, contracts, 0, turns);
    }

    // ∫F²/G dz; F is quadratic in each layer, so that three Gauss points integrate its square exactly.
    private static double ShearFlexibility(IReadOnlyList<Layer> layers, double neutral)
    {
        double sum = 0,
            before = 0,
            face = 0;
        foreach (var layer in layers)
        {
            var stretch = PlaneModulusPa(layer);
            double At(double z) => before + stretch * (z * z - face * face - 2 * neutral * (z - face)) / 2;
            var (middle, reach) = (face + layer.ThicknessM / 2, layer.ThicknessM / 2 * Math.Sqrt(0.6));
            var mean = (5 * Math.Pow(At(middle - reach), 2) + 8 * Math.Pow(At(middle), 2) + 5 * Math.Pow(At(middle + reach), 2)) / 18;
            sum += mean * layer.ThicknessM / ShearModulusPa(layer);
            before = At(face + layer.ThicknessM);
            face += layer.ThicknessM;
        }

        return sum;
    }

    private static void Check(IReadOnlyList<Layer> layers)
    {
        ArgumentNullException.ThrowIfNull(layers);
        if (layers.Count == 0)
        {
            throw new ArgumentException("accepted: at least one layer", nameof(layers));
        }

        foreach (var layer in layers)
        {
            Require.Positive(layer.ThicknessM);
            Require.Positive(layer.ModulusPa);
            Require.Within(layer.Poisson, 0, 0.49, nameof(layer.Poisson));
            Require.Positive(layer.DensityKgM3);
            Require.NotNegative(layer.LossFactor);
        }
    }
}
