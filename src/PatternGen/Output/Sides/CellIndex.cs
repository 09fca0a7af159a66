namespace PatternGen;

/// <summary>
/// Numbers places in a space of up to three dimensions, so that places in one cell of a fine grid share a number.
/// </summary>
/// <remarks>
/// What is the same place by different arithmetic may fall on either side of a cell's border. A place near a border
/// is therefore looked for beyond it too.
/// </remarks>
/// <param name="border">How near to a border "near" is, as a share of the cell, less than a half.</param>
internal sealed class CellIndex(double border)
{
    private readonly Dictionary<(long X, long Y, long Z), int> _numbers = [];

    internal int Count => _numbers.Count;

    /// <summary>Returns the number of a place, given in cells, and whether it is new.</summary>
    internal (int Number, bool IsNew) Find(double x, double y, double z = 0)
    {
        var cell = (X: (long)Math.Round(x), Y: (long)Math.Round(y), Z: (long)Math.Round(z));
        if (_numbers.TryGetValue(cell, out var number))
            return (number, false);
        var beyond = (X: Beyond(x), Y: Beyond(y), Z: Beyond(z));
        for (var choice = 1; choice < 8; choice++)
        {
            var near = (
                X: (choice & 1) * beyond.X,
                Y: (choice >> 1 & 1) * beyond.Y,
                Z: (choice >> 2) * beyond.Z
            );
            if (
                _numbers.TryGetValue(
                    (cell.X + near.X, cell.Y + near.Y, cell.Z + near.Z),
                    out number
                )
            )
                return (number, false);
        }
        number = _numbers.Count;
        _numbers.Add(cell, number);
        return (number, true);
    }

    /// <summary>Forgets all places and gives their memory back.</summary>
    internal void Clear()
    {
        _numbers.Clear();
        _numbers.TrimExcess();
    }

    /// <summary>-1, 0 or 1: which neighbouring cell the value is near to.</summary>
    private int Beyond(double value)
    {
        var rest = value - Math.Round(value);
        return Math.Abs(rest) > 0.5 - border ? Math.Sign(rest) : 0;
    }
}
