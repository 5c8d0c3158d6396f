using CsCheck;
using Stillwall.Materials;
using Stillwall.Walls;

namespace Stillwall.Tests.Walls;

public class GyroidTests
{
    // Counted on a grid: the sheet is where sin x cos y + sin y cos z + sin z cos x stays within the slope times half the thickness of zero. A second
    // method; the level set is thinner than the offset by up to 4 %.
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.1)]
    public void The_share_of_solid_is_that_of_a_counted_cell(double sheetOverCell)
    {
        const int Grid = 90;
        var inside = 0;
        for (var i = 0; i < Grid * Grid * Grid; i++)
        {
            double x = Turn(i % Grid),
                y = Turn(i / Grid % Grid),
                z = Turn(i / Grid / Grid);
            var level = Math.Sin(x) * Math.Cos(y) + Math.Sin(y) * Math.Cos(z) + Math.Sin(z) * Math.Cos(x);
            var slope = Math.Sqrt(
                Math.Pow(Math.Cos(x) * Math.Cos(y) - Math.Sin(z) * Math.Sin(x), 2)
                    + Math.Pow(Math.Cos(y) * Math.Cos(z) - Math.Sin(x) * Math.Sin(y), 2)
                    + Math.Pow(Math.Cos(z) * Math.Cos(x) - Math.Sin(y) * Math.Sin(z), 2)
            );
            inside += Math.Abs(level) <= slope * Math.PI * sheetOverCell ? 1 : 0;
        }

        Assert.Equal(inside / Math.Pow(Grid, 3), Gyroid.SolidShare(0.01, 0.01 * sheetOverCell), 0.05 * Gyroid.SolidShare(0.01, 0.01 * sheetOverCell));

        static double Turn(int k) => 2 * Math.PI * (k + 0.5) / Grid;
    }

    // Upper bound of a porous solid from its bulk and shear modulus (Hashin and Shtrikman 1963, from memory).
    [Fact]
    public void An_empty_lattice_is_softer_than_any_porous_solid_may_be()
    {
        Gen.Double[0.05, 0.5]
            .Sample(share =>
            {
                var (skin, pores) = (SkinMaterials.Petg, 1 - share);
                var (bulk, shear) = (skin.ModulusPa / 3 / (1 - 2 * skin.Poisson), skin.ModulusPa / 2 / (1 + skin.Poisson));
                var k = bulk + pores / (-1 / bulk + 3 * share / (3 * bulk + 4 * shear));
                var g = shear + pores / (-1 / shear + 6 * share * (bulk + 2 * shear) / (5 * shear * (3 * bulk + 4 * shear)));
                var lattice = Gyroid.Empty(0.012, share, skin);
                Assert.InRange(lattice.ModulusPa, 0, 9 * k * g / (3 * k + g));
                Assert.Equal(share * skin.DensityKgM3, lattice.DensityKgM3, 1e-9);
            });
    }

    [Fact]
    public void A_filled_lattice_lies_between_its_plastic_and_its_cast()
    {
        var core = new CoreMaterial(1133, 4.3e9, 3e9, 6e9, 0.2, 0.012, null);
        Gen.Double[0, 1]
            .Sample(share =>
            {
                var filled = Gyroid.Filled(0.012, share, SkinMaterials.Petg, core);
                Assert.InRange(filled.ModulusPa, 2.0e9 * (1 - 1e-12), 4.3e9 * (1 + 1e-12));
                Assert.InRange(filled.LossFactor, 0.012 - 1e-12, 0.03 + 1e-12);
            });
        Assert.Equal(2 / (1 / 2.0e9 + 1 / 4.3e9), Gyroid.Filled(0.012, 0.5, SkinMaterials.Petg, core).ModulusPa, 1);
    }

    [Fact]
    public void The_passage_narrows_with_the_sheet_and_thick_sheets_are_refused()
    {
        Assert.Equal(0.0042 - 0.0012, Gyroid.PassageM(0.010, 0.0012), 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => Gyroid.SolidShare(0.01, 0.004));
    }
}
