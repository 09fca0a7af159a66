namespace PatternGen.Tests.Architecture.Rooms.Sample;

// One type for each way in which a room could reach into a later one.

internal sealed class ByBase : Later;

internal sealed class ByInterface : ILater;

[Later]
internal sealed class ByAttribute;

internal sealed class ByConstraint<T>
    where T : Later;

internal delegate void ByDelegate(Later later);

internal interface ByArray
{
    Later[] All { get; }
}

internal sealed class ByField
{
    private readonly Later? _later = null;

    public override string ToString() => $"{_later}";
}

internal static class ByEnum
{
    public static string Name(object kind) => ((LaterKind)kind).ToString();
}

internal static class ByTypeArgument
{
    public static int Count() => new List<Later>().Count;
}

internal static class ByTypeOf
{
    public static string Name() => typeof(Later).Name;
}

internal static class ByLambda
{
    public static int Sum(int[] numbers) => numbers.Sum(number => number + Later.Answer());
}

internal static class ByIterator
{
    public static IEnumerable<int> Answers()
    {
        yield return Later.Answer();
    }
}

internal static class ByCatch
{
    public static void Try(Action action)
    {
        try
        {
            action();
        }
        catch (LaterException) { }
    }
}

internal static class ByNestedType
{
    internal sealed class Inner
    {
        public static int Answer() => Later.Answer();
    }
}
