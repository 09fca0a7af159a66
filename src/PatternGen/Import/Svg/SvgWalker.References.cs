using Svg;

namespace PatternGen;

internal sealed partial class SvgWalker
{
    private void Use(SvgUse use, in SvgWalk walk, string where)
    {
        if (_index.Find(use) is not { } target)
        {
            _curves.Note(ImportNoteKind.Skipped, "use of something that is not in the file", where);
            return;
        }
        if (!_within.Add(target))
            throw SvgRefusal.Circular(SvgIndex.NameOf(target) ?? "", where);
        var (x, y) = (walk.Viewport.X(use.X), walk.Viewport.Y(use.Y));
        var placed = walk with
        {
            Frame = walk.Frame.Within(
                Affine.Move(x, y),
                share: 0,
                Math.Max(Math.Abs(x), Math.Abs(y))
            ),
        };
        if (target is SvgSymbol symbol)
            Symbol(symbol, use, placed, where);
        else if (target is SvgFragment inner)
            Children(inner, Inside(inner, placed, use));
        else
            Element(target, placed);
        _within.Remove(target);
    }

    private void Symbol(SvgSymbol symbol, SvgUse use, in SvgWalk walk, string where)
    {
        if (IsNotDisplayed(symbol))
        {
            _curves.Note(ImportNoteKind.Skipped, "hidden element", where);
            return;
        }
        var inner = walk with
        {
            Frame = walk.Frame.Within(symbol.Transforms),
            IsHidden = IsHidden(symbol) ?? walk.IsHidden,
        };
        var (width, height) = (
            Side(use, "width", use.Width, walk.Viewport.Width, walk.Viewport.X),
            Side(use, "height", use.Height, walk.Viewport.Height, walk.Viewport.Y)
        );
        Children(symbol, Boxed(inner, symbol.ViewBox, width, height, symbol.AspectRatio));
    }

    /// <summary>The walk inside an svg element that is within another.</summary>
    /// <param name="element">The element.</param>
    /// <param name="walk">The walk outside.</param>
    /// <param name="use">What refers to it, which may set its size.</param>
    private static SvgWalk Inside(SvgFragment element, in SvgWalk walk, SvgUse? use)
    {
        var viewport = walk.Viewport;
        var (x, y) = (viewport.X(element.X), viewport.Y(element.Y));
        var moved = walk with
        {
            Frame = walk.Frame.Within(
                Affine.Move(x, y),
                share: 0,
                Math.Max(Math.Abs(x), Math.Abs(y))
            ),
        };
        var (width, height) = (viewport.X(element.Width), viewport.Y(element.Height));
        return Boxed(
            moved,
            element.ViewBox,
            use is null ? width : Side(use, "width", use.Width, width, viewport.X),
            use is null ? height : Side(use, "height", use.Height, height, viewport.Y),
            element.AspectRatio
        );
    }

    private static double Side(
        SvgUse use,
        string name,
        SvgUnit length,
        double otherwise,
        Func<SvgUnit, double> measure
    ) => use.TryGetAttribute(name, out _) ? measure(length) : otherwise;

    private static SvgWalk Boxed(
        in SvgWalk walk,
        SvgViewBox box,
        double width,
        double height,
        SvgAspectRatio? aspect
    )
    {
        // In a sheet of unknown size nothing can be fitted into a share of it.
        if (!SvgFit.HasSize(box) || !(width > 0 && height > 0))
            return walk with
            {
                Viewport = width > 0 && height > 0 ? new(width, height) : walk.Viewport,
            };
        var fit = SvgFit.Of(box, width, height, aspect);
        return walk with
        {
            Frame = walk.Frame.Within(
                fit,
                2 * SvgFrame.Digit,
                Math.Max(Math.Abs(fit.E), Math.Abs(fit.F))
            ),
            Viewport = new(box.Width, box.Height),
        };
    }
}
