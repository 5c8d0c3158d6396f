using System.Globalization;
using Stillwall.Cli.Running;
using Stillwall.Materials;
using Stillwall.Pours;
using Stillwall.Projects;
using Stillwall.Walls;

namespace Stillwall.Cli.Commands;

/// <summary>Reads layers as they are typed: <c>2mm:petg,12mm:plaster</c> or <c>3:2e9:0.38:1270</c>.</summary>
internal static class LayerList
{
    private const int MostLayers = 50;

    internal static IReadOnlyList<Layer> Read(string text)
    {
        var layers = text.Split(',');
        return layers.Length <= MostLayers
            ? [.. layers.Select(l => One(l.Trim()))]
            : throw Refusal.Input(
                $"--layers: {layers.Length.ToString(CultureInfo.InvariantCulture)} layers; at most {MostLayers.ToString(CultureInfo.InvariantCulture)}"
            );
    }

    private static Layer One(string text) =>
        text.Split(':') switch
        {
            [var thickness, var material] => Named(Thickness(thickness, isBareAccepted: false), material.Trim()),
            [var thickness, var modulus, var poisson, var density] => new Layer(
                Thickness(thickness, isBareAccepted: true),
                Figure(modulus, "E", Dimension.Pressure, 1e3, 1e13),
                Figure(poisson, "nu", Dimension.None, 0, 0.49),
                Figure(density, "rho", Dimension.Density, 1, 30000)
            ),
            _ => throw Refusal.Input($"--layers: \"{text}\" is no layer; thickness:material such as 2mm:petg, or t:E:nu:rho in mm, Pa, -, kg/m3"),
        };

    // A cast is taken set and dry, at its usual ratio of powder to water.
    private static Layer Named(double thicknessM, string material)
    {
        if (SkinMaterials.Find(material) is { } skin)
        {
            return Layer.Of(thicknessM, skin);
        }

        return CastMixes.Find(material) is { } mix
            ? Layer.Of(thicknessM, CoreMaterial.Dry(mix, Mix.FromPowder(mix, 1, mix.PowderPerWaterRatio).DryDensityKgM3))
            : throw Invocation.NotOneOf("--layers", material, [.. SkinMaterials.All.Select(s => s.Name), .. CastMixes.All.Select(m => m.Name)]);
    }

    private static double Thickness(string text, bool isBareAccepted)
    {
        var si =
            isBareAccepted && Bare(text) is { } millimetres ? millimetres / 1000
            : Units.TryRead(text.Trim(), Dimension.Length, out var metres, out var fault) ? metres
            : throw Refusal.Input($"--layers: {fault}");
        return si is >= 1e-5 and <= 1 ? si : throw Refusal.Input($"--layers: a thickness of \"{text.Trim()}\" is out of range; 0.01 mm to 1 m");
    }

    private static double Figure(string text, string name, Dimension dimension, double least, double greatest)
    {
        var si =
            Bare(text) is { } bare ? bare
            : dimension != Dimension.None && Units.TryRead(text.Trim(), dimension, out var value, out _) ? value
            : throw Refusal.Input($"--layers: {name} \"{text.Trim()}\" is not a number");
        return si >= least && si <= greatest
            ? si
            : throw Refusal.Input($"--layers: {name} \"{text.Trim()}\" is out of range; {Units.Write(least, dimension)} to {Units.Write(greatest, dimension)}");
    }

    private static double? Bare(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;
}
