using System.Reflection;

namespace PatternGen.Tests.Compass;

/// <summary>A missing argument is named as the caller knows it, not as some list or helper behind the method does.</summary>
public class PencilNullSpecs
{
    public static TheoryData<string> Parameters =>
        [
            .. typeof(Pencil)
                .GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
                .SelectMany(method => method.GetParameters())
                .Where(needed => !needed.ParameterType.IsValueType && !needed.HasDefaultValue)
                .Select(needed => $"{needed.Member} {needed.Name}"),
        ];

    [Theory]
    [MemberData(nameof(Parameters))]
    public void A_missing_argument_is_named(string parameter)
    {
        var (method, missing) = typeof(Pencil)
            .GetMethods()
            .SelectMany(method => method.GetParameters(), (method, needed) => (method, needed))
            .Single(pair => $"{pair.method} {pair.needed.Name}" == parameter);
        Exception? error = null;
        CompassDrawing.Of(pencil =>
        {
            var given = new Given(pencil);
            var arguments = method
                .GetParameters()
                .Select(needed => needed == missing ? null : given.For(needed));
            error = Record.Exception(() => method.Invoke(pencil, [.. arguments]));
        });

        error!
            .InnerException.ShouldBeOfType<ArgumentNullException>()
            .ParamName.ShouldBe(missing.Name);
    }

    /// <summary>Arguments that fit: a circle, a line, a point in its middle and two on it.</summary>
    private sealed class Given
    {
        private readonly MarkedPoint _middle;
        private readonly MarkedPoint _right;
        private readonly MarkedPoint _top;
        private readonly DrawnCurve _circle;
        private readonly DrawnCurve _line;

        internal Given(Pencil pencil)
        {
            (_middle, _right, _top) = (pencil.Mark(0, 0), pencil.Mark(10, 0), pencil.Mark(0, 10));
            pencil.SetRadius(10);
            _circle = pencil.Circle(_middle);
            _line = pencil.Join(_right, _top);
        }

        internal object? For(ParameterInfo needed)
        {
            var type = needed.ParameterType;
            if (needed.HasDefaultValue)
                return needed.DefaultValue;
            if (type == typeof(MarkedPoint))
                return Point(needed.Name!);
            if (type.IsAssignableFrom(typeof(MarkedPoint[])))
                return new[] { Point(needed.Name!) };
            if (type == typeof(DrawnCurve))
                return needed.Member.Name == nameof(Pencil.Perpendicular) ? _line : _circle;
            if (type.IsAssignableFrom(typeof(DrawnCurve[])))
                return new[] { _circle };
            if (type == typeof(int))
                return 6;
            if (type == typeof(double))
                return 2.0;
            return Activator.CreateInstance(type);
        }

        private MarkedPoint Point(string name) =>
            name switch
            {
                "from" => _right,
                "to" or "through" or "start" => _top,
                _ => _middle,
            };
    }
}
