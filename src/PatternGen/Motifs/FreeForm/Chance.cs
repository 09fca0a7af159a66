namespace PatternGen;

/// <summary>Numbers drawn from a seed: the same on every machine, in every release.</summary>
/// <remarks>
/// Splitmix64 (Steele, Lea and Flood, Fast splittable pseudorandom number generators, 2014). The framework's own generator
/// may change with its version.
/// </remarks>
internal sealed class Chance(int seed)
{
    private ulong _state = (uint)seed;

    /// <summary>The next number, from 0 (included) to 1 (excluded).</summary>
    internal double Next()
    {
        _state += 0x9E3779B97F4A7C15;
        var mixed = _state;
        mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        mixed ^= mixed >> 31;
        // The upper 53 bits fill a double's digits exactly.
        return (mixed >> 11) * (1.0 / (1UL << 53));
    }
}
