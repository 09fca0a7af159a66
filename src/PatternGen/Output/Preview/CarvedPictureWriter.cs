using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws the carved surface: wood and its grain, the floors of the chips, their walls, the shade in their depth, and the edges.</summary>
internal sealed class CarvedPictureWriter
{
    private const double Margin = 6;

    /// <summary>Width in mm of the light that catches on an edge: a ridge of two chips is twice as wide as a hair.</summary>
    private const double EdgeWidth = 0.13;

    private const LayerSet Cut = LayerSet.Chips | LayerSet.LineCuts;

    /// <summary>A thousandth of a millimetre is finer than any screen shows.</summary>
    private const int Decimals = 3;

    /// <summary>Steps in which the shade in a chip deepens: more look no smoother.</summary>
    private const int ShadeSteps = 5;

    /// <summary>How much of the light each step takes: in the valley a quarter of it is gone, as walls hide the sky there.</summary>
    private const double ShadePerStep = 0.055;

    /// <summary>The soft shadow of the wood on the table: how far it falls in mm, in how many steps, and how dark each is.</summary>
    private const double ShadowReach = 1.6;
    private const int ShadowSteps = 5;
    private const double ShadowOpacity = 0.06;

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
            SvgStyle.Line(_scale is null ? CarvedColours.Edge : CarvedColours.DepthEdge, EdgeWidth)
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
        if (hasStock)
            DrawShadow(file);
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
        var style = SvgStyle.Line(CarvedColours.Grain, 0.2) with { StrokeOpacity = 0.2 };
        file.StartGroup("grain", null, style, hasStock ? "wood" : null);
        var room = new Extents(
            new(sheet.Left, sheet.Top - sheet.Height),
            new(sheet.Left + sheet.Width, sheet.Top)
        );
        foreach (var (line, width) in WoodGrain.Lines(hasStock ? _piece : room, Angle.Zero))
            file.Paths.Open(line.Span, width);
        file.EndGroup();
    }

    /// <summary>The wood's shadow falls away from the light.</summary>
    private void DrawShadow(SvgFile file)
    {
        var away = Vector.Towards(Angle.FromDegrees(270 - _picture.LightDirection));
        var style = SvgStyle.Area(CarvedColours.Shade) with { FillOpacity = ShadowOpacity };
        file.StartGroup("shadow", null, style);
        for (var step = ShadowSteps; step > 0; step--)
        {
            var move = Transform.Move(away * (ShadowReach * step / ShadowSteps));
            file.Paths.Begin();
            foreach (var ring in Pattern.Stock)
                file.Paths.AddClosed(ring.Transformed(move).Span);
            file.Paths.End();
        }
        file.EndGroup();
    }

    private void DrawWalls(SvgFile file)
    {
        if ((Pattern.Root.Layers & Cut) == 0)
            return;
        // Under the walls of grooves, whose inner corners cover what of their edge lies inside them.
        DrawBelow(
            file,
            "groove-edges",
            SvgStyle.Line(CarvedColours.Edge, 2 * EdgeWidth),
            _ => 0,
            only: LayerSet.LineCuts
        );
        // What shows between walls, where both cover a part of a pixel: the line of the valley.
        DrawBelow(file, "valleys", SvgStyle.Area(CarvedColours.Valley), _ => 0);
        file.StartGroup("walls", Words.CarvedWalls, SvgStyle.Area(SvgStyle.None));
        Pattern.Root.Draw(new CarvedWallSink(file, _picture.Cutter, _light), Cut);
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
        string? title = null,
        LayerSet only = Cut
    )
    {
        if ((Pattern.Root.Layers & only) == 0)
            return;
        file.StartGroup(id, title, style);
        Pattern.Root.Draw(new DepthAreaSink(file.Paths, _picture.Cutter, _levels, level), only);
        file.EndGroup();
    }
}
