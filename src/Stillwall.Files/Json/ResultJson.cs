using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Appraisals.Explaining;
using Stillwall.Appraisals.Ranking;
using Stillwall.Appraisals.WallChoices;
using Stillwall.Cabinets;
using Stillwall.Materials;
using Stillwall.Neighbours.Equalisers;
using Stillwall.Neighbours.Joins;
using Stillwall.Neighbours.Rooms;
using Stillwall.Numerics;
using Stillwall.Parts;
using Stillwall.Pours;
using Stillwall.Proofs.Impedances;
using Stillwall.Proofs.PartyWalls;
using Stillwall.Proofs.Polarities;
using Stillwall.Proofs.Sweeps;
using Stillwall.Proofs.Taps;
using Stillwall.SupplyLists;
using Stillwall.Walls;

namespace Stillwall.Files.Json;

/// <summary>Writes results as JSON: the one place that knows how.</summary>
public static class ResultJson
{
    private static readonly ResultContext Context = new(Options());

    /// <summary>Writes one result.</summary>
    /// <typeparam name="T">Kind of result; one of those this class knows, or <see cref="object"/> for whichever it is.</typeparam>
    /// <param name="result">The result.</param>
    /// <returns>
    /// One JSON document: keys from the properties' names, what is unknown as null, numbers in the shortest form that reads back as the same number,
    /// two spaces of indent, line feeds, one at the end.
    /// </returns>
    /// <exception cref="NotSupportedException">A kind of result that is not known here.</exception>
    /// <exception cref="ArgumentException">A number that is not finite: results never hold one.</exception>
    public static string Write<T>(T result)
    {
        var kind = typeof(T) == typeof(object) ? result?.GetType() ?? typeof(T) : typeof(T);
        var info =
            Context.GetTypeInfo(kind)
            ?? throw new NotSupportedException($"{kind.Name} is no result this class writes; add it to {nameof(ResultContext)}");
        return JsonSerializer.Serialize(result, info) + "\n";
    }

    /// <summary>Writes the result of a proof, and after it what speaks against it.</summary>
    /// <param name="result">The result.</param>
    /// <param name="doubts">The doubts; an empty list where there are none.</param>
    /// <returns>One JSON document as above, its last key <c>doubts</c>.</returns>
    public static string WriteProof(object result, IReadOnlyList<string> doubts)
    {
        ArgumentNullException.ThrowIfNull(result);
        var written = JsonNode.Parse(Write(result))!.AsObject();
        written["doubts"] = JsonSerializer.SerializeToNode(doubts, Context.IReadOnlyListString);
        return JsonSerializer.Serialize(written, Context.JsonObject) + "\n";
    }

    private static JsonSerializerOptions Options() =>
        new()
        {
            PropertyNamingPolicy = UnderscoreNames.Policy,
            WriteIndented = true,
            IndentSize = 2,
            NewLine = "\n",
            // Read by people and by JSON readers, never put into a web page as it is: "−" stays "−".
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            NumberHandling = JsonNumberHandling.Strict,
            Converters =
            {
                new JsonStringEnumConverter<Verdict>(UnderscoreNames.Policy, allowIntegerValues: false),
                new JsonStringEnumConverter<Acting>(UnderscoreNames.Policy, allowIntegerValues: false),
                new JsonStringEnumConverter<WorkStep>(UnderscoreNames.Policy, allowIntegerValues: false),
                new JsonStringEnumConverter<Hazard>(UnderscoreNames.Policy, allowIntegerValues: false),
                new JsonStringEnumConverter<LimitedBy>(SpacedNames.Policy, allowIntegerValues: false),
                new JsonStringEnumConverter<LeakBound>(SpacedNames.Policy, allowIntegerValues: false),
                new JsonStringEnumConverter<SupplyState>(SpacedNames.Policy, allowIntegerValues: false),
                new JsonStringEnumConverter<SectionKind>(SpacedNames.Policy, allowIntegerValues: false),
            },
        };
}

/// <summary>The kinds of result that are written, found out when this is compiled.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(Appraisal))]
[JsonSerializable(typeof(MixFigures))]
[JsonSerializable(typeof(PanelResult))]
[JsonSerializable(typeof(Biquad))]
[JsonSerializable(typeof(Joining))]
[JsonSerializable(typeof(JoiningReport))]
[JsonSerializable(typeof(RankedDrivers))]
[JsonSerializable(typeof(PrintedParts))]
[JsonSerializable(typeof(WallChoice))]
[JsonSerializable(typeof(Explanation))]
[JsonSerializable(typeof(ImpedanceResult))]
[JsonSerializable(typeof(SweepResult))]
[JsonSerializable(typeof(TapResult))]
[JsonSerializable(typeof(WallReading))]
[JsonSerializable(typeof(HoldTestResult))]
[JsonSerializable(typeof(DryOutReport))]
[JsonSerializable(typeof(PolarityReport))]
[JsonSerializable(typeof(PlaceReport))]
[JsonSerializable(typeof(EqualiserReport))]
[JsonSerializable(typeof(RatedWall))]
[JsonSerializable(typeof(IReadOnlyList<string>))]
[JsonSerializable(typeof(JsonObject))]
[JsonSerializable(typeof(int))]
[JsonSerializable(typeof(string))]
[JsonSerializable(typeof(double))]
internal sealed partial class ResultContext : JsonSerializerContext;
