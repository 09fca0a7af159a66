using SkiaSharp;
using Svg.Skia;

namespace PatternGen.Tests.Output.Svg;

/// <summary>Renderers draw the same picture whether chips are written out or referred to.</summary>
public sealed class SvgRepeatsRenderTests : IDisposable
{
    /// <summary>
    /// Steps of 255 that a pixel may differ by: a line that moves by a millionth may fall into the next of the
    /// fractions of a pixel that a renderer counts in. A line that is not where it was differs by more than 200.
    /// </summary>
    private const int Step = 96;

    /// <summary>Makes the thinnest line, of 0.1 mm, 1.5 pixels wide.</summary>
    private const int Zoom = 4;

    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string, For> Pictures =>
        [
            .. from name in (string[])["rosette", "rail", "holed"]
            from purpose in Enum.GetValues<For>()
            select (name, purpose),
        ];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Pictures))]
    public void Librsvg_draws_the_same(string name, For purpose) =>
        ShouldDrawTheSame(name, purpose, Librsvg);

    [Theory]
    [MemberData(nameof(Pictures))]
    public void Skia_draws_the_same(string name, For purpose) =>
        ShouldDrawTheSame(name, purpose, Skia);

    private void ShouldDrawTheSame(string name, For purpose, Func<string, SKBitmap> draw)
    {
        using var inFull = draw(Save(name, purpose, Repeats.InFull));
        using var byReference = draw(Save(name, purpose, Repeats.ByReference));

        byReference.Info.ShouldBe(inFull.Info);
        inFull
            .Bytes.Zip(byReference.Bytes, (a, b) => Math.Abs(a - b))
            .Max()
            .ShouldBeLessThanOrEqualTo(Step);
    }

    private string Save(string name, For purpose, Repeats repeats)
    {
        var path = _folder.File($"{repeats}.svg");
        RepeatSamples.All[name].Save(path, purpose, SaveOptions.Default.WithRepeats(repeats));
        return path;
    }

    private SKBitmap Librsvg(string path)
    {
        var picture = _folder.File("picture.png");
        OutsideReader.Run(
            "librsvg2-bin",
            "rsvg-convert",
            $"--zoom={Zoom}",
            $"--output={picture}",
            path
        );
        return SKBitmap.Decode(picture);
    }

    private static SKBitmap Skia(string path)
    {
        using var drawing = new SKSvg();
        var picture = drawing.Load(path).ShouldNotBeNull();
        var bitmap = new SKBitmap((int)picture.CullRect.Width, (int)picture.CullRect.Height);
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.White);
        canvas.Scale(Zoom);
        canvas.DrawPicture(picture);
        return bitmap;
    }
}
