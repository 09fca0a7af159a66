namespace PatternGen.Geometry;

/// <summary>Sorts numbers by keys, and by themselves where the keys are equal.</summary>
internal static class KeySort
{
    /// <summary>Up to so many, moving each back to its place is quicker than a call.</summary>
    private const int Few = 16;

    internal static void Sort(Span<double> keys, Span<int> numbers)
    {
        if (keys.Length > Few)
            keys.Sort(numbers);
        for (var i = 1; i < keys.Length; i++)
        {
            var (key, number) = (keys[i], numbers[i]);
            var place = i;
            for (; place > 0; place--)
            {
                var (before, numberBefore) = (keys[place - 1], numbers[place - 1]);
                if (before < key || (before == key && numberBefore < number))
                    break;
                (keys[place], numbers[place]) = (before, numberBefore);
            }
            (keys[place], numbers[place]) = (key, number);
        }
    }
}
