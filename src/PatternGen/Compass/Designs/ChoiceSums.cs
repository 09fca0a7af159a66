namespace PatternGen;

/// <summary>The least and the most that some of the last choices can add to a design, in chips or in area.</summary>
internal sealed class ChoiceSums
{
    private readonly double[][] _least;
    private readonly double[][] _most;

    /// <param name="sizes">What each choice adds.</param>
    internal ChoiceSums(IReadOnlyList<double> sizes)
    {
        _least = new double[sizes.Count + 1][];
        _most = new double[sizes.Count + 1][];
        for (var from = 0; from <= sizes.Count; from++)
        {
            _least[from] = Sums([.. sizes.Skip(from).Order()]);
            _most[from] = Sums([.. sizes.Skip(from).OrderDescending()]);
        }
    }

    /// <summary>The least that a number of choices from one on add.</summary>
    internal double Least(int from, int count) => _least[from][count];

    /// <summary>The most that a number of choices from one on add.</summary>
    internal double Most(int from, int count) => _most[from][count];

    private static double[] Sums(double[] sizes)
    {
        var sums = new double[sizes.Length + 1];
        for (var i = 0; i < sizes.Length; i++)
            sums[i + 1] = sums[i] + sizes[i];
        return sums;
    }
}
