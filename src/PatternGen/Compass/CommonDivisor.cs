namespace PatternGen;

/// <summary>The greatest common divisor of whole numbers, by Euclid's way.</summary>
internal static class CommonDivisor
{
    /// <summary>Returns the largest number that divides both; that of a number and 0 is the number.</summary>
    internal static int Of(int a, int b) => b == 0 ? a : Of(b, a % b);
}
