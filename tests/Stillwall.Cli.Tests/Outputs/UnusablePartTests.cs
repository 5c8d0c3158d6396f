using Stillwall.Appraisals;
using Stillwall.Cli.Output;
using Stillwall.Parts;
using Stillwall.Parts.Drawing;

namespace Stillwall.Cli.Tests.Outputs;

/// <summary>Which drawn parts cannot be used, in words.</summary>
public sealed class UnusablePartTests
{
    [Fact]
    public void An_open_part_one_that_is_too_large_and_two_that_collide_are_named()
    {
        PrintedPart Part(string name, bool? fits, bool isClosed) => new(name, name, 1e-3, 1, [0.1, 0.1, 0.1], fits, 12, isClosed, null);
        var parts = new PrintedParts(
            [Part("left plate", true, true), Part("foot", true, false), Part("ring", null, false), Part("outer sleeve", false, true)],
            [],
            [new Collision("brace", "driver", 0.161, 1e-4)],
            1e-3,
            null
        );

        Assert.Equal(
            ["not closed: foot, ring", "larger than the printer's bed: outer sleeve", "brace and driver collide 161 mm behind the front"],
            PartText.Unusable(parts, new Show(false, ""))
        );
        Assert.Empty(PartText.Unusable(parts with { Parts = [parts.Parts[0]], Collisions = [] }, new Show(false, "")));
    }
}
