using System.Text.Json;
using Stillwall.Files.Json;
using Stillwall.Web.Proving;
using Stillwall.Web.Store;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Serving;

/// <summary>The signal to play, and what a recording of it shows. Nothing is written: keeping is the page's.</summary>
internal static class ProofEndpoints
{
    /// <summary>Most bytes of a recording: a minute of stereo at 96 kHz in 32 bit, and some.</summary>
    internal const int RecordingLimit = 64 << 20;

    private const string Wav = "audio/wav";

    // A recording takes some ten times its size while it is read.
    private static readonly SemaphoreSlim Turn = new(1);

    /// <summary>Adds <c>signals/NAME.wav</c> and <c>prove/KIND</c>.</summary>
    internal static void MapProofs(this IEndpointRouteBuilder files)
    {
        files.MapGet(
            $"/signals/{{name:regex(^({string.Join('|', ProofReader.Signals)})$)}}.wav",
            (string project, string name, Workshop workshop) =>
                workshop.Opened(project) is null ? Results.NotFound() : Results.File(ProofReader.SignalFile(name), Wav, $"{name}.wav")
        );
        files.MapPost($"/prove/{{kind:regex(^({string.Join('|', ProofReader.Kinds)})$)}}", Take).WithMetadata(new SizeLimit(RecordingLimit));
    }

    // No form of another page can send this kind of content, and the gate lets no other page's script in.
    private static async Task<IResult> Take(string project, string kind, HttpContext context, Workshop workshop)
    {
        var request = context.Request;
        if (workshop.Opened(project) is not { } opened)
        {
            return Results.NotFound();
        }

        if (request.ContentType != Wav)
        {
            return Line(ProofTexts.NoWav, StatusCodes.Status415UnsupportedMediaType);
        }

        await Turn.WaitAsync(context.RequestAborted);
        try
        {
            using var body = new MemoryStream((int)Math.Min(request.ContentLength ?? 0, RecordingLimit));
            await request.Body.CopyToAsync(body, context.RequestAborted);
            var facts = opened.Now.Plan.Facts;
            var outcome = await Task.Run(
                () => ProofReader.Read(kind, name => request.Query[name], facts, body.GetBuffer().AsMemory(0, (int)body.Length), opened.Proofs.Of(kind)),
                context.RequestAborted
            );
            opened.Proofs.Take(outcome);
            using var document = JsonDocument.Parse(ResultJson.Write(outcome.Result!));
            return Results.Json(new { warnings = ProofTexts.Said(outcome), result = document.RootElement.Clone() });
        }
        catch (BroughtRefusal refusal)
        {
            return Line(refusal.Message, StatusCodes.Status400BadRequest);
        }
        catch (BadHttpRequestException e) when (e.StatusCode == StatusCodes.Status413PayloadTooLarge)
        {
            return Line(ProofTexts.TooLarge, StatusCodes.Status413PayloadTooLarge);
        }
        finally
        {
            Turn.Release();
        }
    }

    private static IResult Line(string line, int status) => Results.Text(line, "text/plain", System.Text.Encoding.UTF8, status);
}
