namespace PatternGen;

/// <summary>Counts how the cells of a field come out.</summary>
internal sealed class FieldTally
{
    private int _whole;
    private int _clipped;
    private int _shrunk;
    private int _leftOut;
    private int _slivers;
    private double _sliverArea;
    private double _area;

    internal void Add(int whole = 0, int clipped = 0, int shrunk = 0, int leftOut = 0)
    {
        _whole += whole;
        _clipped += clipped;
        _shrunk += shrunk;
        _leftOut += leftOut;
    }

    internal void AddArea(double area) => _area += area;

    internal void AddSliver(double area)
    {
        _slivers++;
        _sliverArea += area;
    }

    internal FieldFit ToFit(double fieldArea, double narrowest) =>
        new(
            (_whole, _clipped, _shrunk, _leftOut),
            (_slivers, narrowest, _sliverArea),
            _area,
            fieldArea
        );
}
