using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws the carved surface: wood and its grain, the floors of the chips, their walls, the shade in their depth, and the edges.</summary>
internal sealed class CarvedPictureWriter
{
    private const double Margin = 6;

    /// <summary>A thousandth of a millimetre is finer than any screen shows.</summary>
    private const int Decimals = 3;

    /// <summary>Steps in which the shade in a chip deepens: more look no smoother.</summary>
    private const int ShadeSteps = 6;

    /// <summary>How much of the light each step takes: in the valley half of it is gone, as walls hide the sky there.</summary>
    private const double ShadePerStep = 0.055;

    private readonly CarvedPicture _picture;
    private readonly CarvingLight _light;
    private readonly Extents _piece;
    private readonly DepthScale? _scale;
    private readonly DepthLegend? _legend;
    private readonly double _deepest;
    private readonly DepthLevels _levels = new();

    /// <exception cref="PatternException">There is nothing to see, or a chip can't be cut.</exception>
    internal CarvedPictureWriter(CarvedPicture picture)
    {
        _picture = picture;
        _light = new(picture.LightDirection, picture.LightHeight);
        _piece =
            DrawingSurvey.Of(Pattern, LayerSet.Stock | LayerSet.Chips | LayerSet.LineCuts)
            ?? throw new PatternException(
                "There is nothing to see: the pattern has no chip, no line cut and no outline of the wood.",
                remedies: ["add chips, line cuts or an outline before the preview"]
            );
        _deepest = DepthSurvey.Of(Pattern, picture.Cutter);
        if (!picture.IsInDepthColours || _deepest == 0)
            return;
        _scale = new(_deepest);
        _legend = new(_scale, _piece, Words);
    }

    private Pattern Pattern => _picture.Pattern;

    private Wording Words => _picture.Wording;

    internal void Write(OutputBuffer output)
    {
        var sheet = SvgSheet.Around((_legend?.Box ?? _piece).Grown(Margin), step: 0.1);
        var file = new SvgFile(output, sheet, Decimals);
        file.Start(
            Words.AsCarved(Pattern.Title(Words)),
            string.Join("; ", Pattern.Caption(Words).Append(Words.DeepestCut(_deepest)))
        );
        DrawWood(file, sheet);
        if (_scale is null)
            DrawWalls(file);
        else
            DrawDepths(file, _scale);
        DrawDepthLines(file);
        var layers = Layers(file);
        layers.Chips(
            SvgStyle.Line(_scale is null ? CarvedColours.Edge : CarvedColours.DepthEdge, 0.13)
        );
        layers.Labels(SvgStyle.Line(CarvedColours.Ink, 0.25));
        _legend?.Draw(file);
        file.Finish();
    }

    private SvgLayers Layers(SvgFile file) =>
        new(Pattern, file, SaveOptions.Default.WithDecimals(Decimals).WithWording(Words));

    private void DrawWood(SvgFile file, SvgSheet sheet)
    {
        var hasStock = Pattern.Root.Layers.HasFlag(LayerSet.Stock);
        var wood = _scale is null ? CarvedColours.Wood : CarvedColours.Plain;
        // Without an outline all that is seen is wood.
        file.Background(hasStock ? CarvedColours.Table : wood);
        Layers(file).StockArea(new(wood, CarvedColours.WoodEdge, 0.3));
        if (_scale is not null)
            return;
        if (hasStock)
            file.Clip(
                "wood",
                paths =>
                {
                    paths.Begin();
                    Pattern.Root.Draw(new SvgAreaSink(paths), LayerSet.Stock);
                    paths.End();
                }
            );
        var style = SvgStyle.Line(CarvedColours.Grain, 0.2) with { StrokeOpacity = 0.28 };
        file.StartGroup("grain", null, style, hasStock ? "wood" : null);
        var room = new Extents(
            new(sheet.Left, sheet.Top - sheet.Height),
            new(sheet.Left + sheet.Width, sheet.Top)
        );
        foreach (var (line, width) in WoodGrain.Lines(hasStock ? _piece : room, Angle.Zero))
            file.Paths.Open(line.Span, width);
        file.EndGroup();
    }

    private void DrawWalls(SvgFile file)
    {
        const LayerSet cut = LayerSet.Chips | LayerSet.LineCuts;
        if ((Pattern.Root.Layers & cut) == 0)
            return;
        // What shows between walls, where both cover a part of a pixel: the line of the valley.
        DrawBelow(file, "valleys", SvgStyle.Area(CarvedColours.Valley), _ => 0);
        file.StartGroup("walls", Words.CarvedWalls, SvgStyle.Area(SvgStyle.None));
        Pattern.Root.Draw(new CarvedWallSink(file, _picture.Cutter, _light), cut);
        file.EndGroup();
        var shade = SvgStyle.Area(CarvedColours.Shade) with { FillOpacity = ShadePerStep };
        for (var step = 1; step <= ShadeSteps; step++)
        {
            var share = (double)step / (ShadeSteps + 1);
            DrawBelow(file, $"shade-{step}", shade, depth => share * depth);
        }
    }

    private void DrawDepths(SvgFile file, DepthScale scale)
    {
        for (var band = 0; band < scale.BandCount; band++)
        {
            var start = scale.StartOf(band);
            DrawBelow(
                file,
                $"depth-{band + 1}",
                SvgStyle.Area(scale.ColourOf(band)),
                _ => start,
                Words.DepthBand(start, scale.EndOf(band))
            );
        }
    }

    private void DrawDepthLines(SvgFile file)
    {
        if (_picture.DepthLineStep is not { } step)
            return;
        var colour = _scale is null ? CarvedColours.DepthLine : CarvedColours.DepthLineOnColours;
        for (var line = 1; line * step < _deepest; line++)
        {
            var depth = line * step;
            DrawBelow(
                file,
                $"depth-line-{line}",
                SvgStyle.Line(colour, 0.07) with
                {
                    StrokeOpacity = 0.75,
                },
                _ => depth,
                Words.DepthLine(depth)
            );
        }
    }

    private void DrawBelow(
        SvgFile file,
        string id,
        SvgStyle style,
        Func<double, double> level,
        string? title = null
    )
    {
        file.StartGroup(id, title, style);
        Pattern.Root.Draw(
            new DepthAreaSink(file.Paths, _picture.Cutter, _levels, level),
            LayerSet.Chips | LayerSet.LineCuts
        );
        file.EndGroup();
    }
}
