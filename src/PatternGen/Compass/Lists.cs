using System.Runtime.CompilerServices;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Lists of what a step does in turn: they run side by side, and one thing alone serves all.</summary>
internal static class Lists
{
    internal static T[] Each<T>(
        IEnumerable<T> things,
        [CallerArgumentExpression(nameof(things))] string name = ""
    )
        where T : class
    {
        T[] each = [.. Guard.NotNull(things, name).Select(thing => Guard.NotNull(thing, name))];
        return each.Length > 0
            ? each
            : throw new ArgumentException(
                "The list is empty; a step does something at least once.",
                name
            );
    }

    internal static T[] Each<T>(
        IEnumerable<T> things,
        int count,
        [CallerArgumentExpression(nameof(things))] string name = ""
    )
        where T : class
    {
        var each = Each(things, name);
        if (each.Length == 1)
            return [.. Enumerable.Repeat(each[0], count)];
        return each.Length == count
            ? each
            : throw new ArgumentException(
                $"The lists run side by side, so this one must hold {count}, or one that serves all, but it holds {each.Length}.",
                name
            );
    }

    internal static (T[] First, T[] Second) SideBySide<T>(
        IEnumerable<T> first,
        IEnumerable<T> second,
        [CallerArgumentExpression(nameof(first))] string firstName = "",
        [CallerArgumentExpression(nameof(second))] string secondName = ""
    )
        where T : class
    {
        var (ones, others) = (Each(first, firstName), Each(second, secondName));
        var count = Math.Max(ones.Length, others.Length);
        return (Each(ones, count, firstName), Each(others, count, secondName));
    }
}
