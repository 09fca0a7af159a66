using System.Runtime.InteropServices;

namespace PatternGen;

/// <summary>The groups of one entity. One object takes in entity after entity.</summary>
/// <remarks>Counts that a file declares are not believed: lists grow with what is read.</remarks>
internal sealed class DxfEntity(ImportedCurves curves)
{
    private const int FirstWhole = 60;
    private const int AfterWhole = 80;
    private const int FirstFacing = 210;
    private const int AfterNumbers = 240;

    private readonly double[] _numbers = new double[AfterNumbers];

    // In which entity a number was read last: none need be cleared for the next one.
    private readonly int[] _readIn = new int[AfterNumbers];
    private int _entity;
    private bool _isEmbedded;
    private byte[] _layerBytes = [];
    private string _layer = "0";

    internal DxfKind Kind { get; private set; }

    /// <summary>Where it begins in the file.</summary>
    internal int Line { get; private set; }

    /// <summary>Its layer; "0" if the file names none.</summary>
    internal string Layer { get; private set; } = "0";

    /// <summary>The name of a block, where one is named.</summary>
    internal string Name { get; private set; } = "";

    /// <summary>Corners of a polyline, or the control points of a spline.</summary>
    internal List<DxfCorner> Corners { get; } = [];

    /// <summary>The points that a spline goes through.</summary>
    internal List<DxfCorner> FitPoints { get; } = [];

    internal List<double> Knots { get; } = [];

    internal List<double> Weights { get; } = [];

    internal bool Has(int code) => _readIn[code] == _entity;

    /// <summary>The value of a code; 0 or another one that the format names where it is left out.</summary>
    internal double Number(int code, double otherwise = 0) =>
        Has(code) ? _numbers[code] : otherwise;

    internal int Whole(int code, int otherwise = 0) => Has(code) ? (int)_numbers[code] : otherwise;

    /// <summary>Whether a bit of the flags, group 70, is set.</summary>
    internal bool HasFlag(int bit) => (Whole(DxfCode.Flags) & bit) != 0;

    /// <summary>Reads an entity whose first group is the present one; the next one's is then.</summary>
    internal void Read(DxfGroupReader reader, DxfKind kind)
    {
        _entity++;
        Kind = kind;
        Line = reader.Line;
        Layer = "0";
        Name = "";
        _isEmbedded = false;
        Corners.Clear();
        FitPoints.Clear();
        Knots.Clear();
        Weights.Clear();
        reader.Require("an entity");
        while (reader.Code != DxfCode.Start)
        {
            Take(reader);
            reader.Require("an entity");
        }
    }

    private void Take(DxfGroupReader reader)
    {
        var code = reader.Code;
        if (code == DxfCode.EmbeddedObject)
            _isEmbedded = true;
        if (_isEmbedded || code >= AfterNumbers)
            return;
        if (code == DxfCode.Layer)
            Layer = LayerOf(reader.Text);
        else if (code == DxfCode.Name)
            Name = DxfText.Decoded(reader.Text);
        else if (code is >= FirstWhole and < AfterWhole)
            Keep(code, reader.Whole());
        else if (Kind.IsDrawn() && code is >= DxfCode.Place and < FirstWhole or >= FirstFacing)
            TakeNumber(code, reader);
    }

    private void TakeNumber(int code, DxfGroupReader reader)
    {
        var number = reader.Number();
        if (Kind == DxfKind.Polyline && TakeOfPolyline(code, number, reader))
            return;
        if (Kind == DxfKind.Spline && TakeOfSpline(code, number, reader))
            return;
        Keep(code, number);
    }

    private bool TakeOfPolyline(int code, double number, DxfGroupReader reader)
    {
        switch (code)
        {
            case 10:
                Add(Corners, new() { X = number }, reader);
                return true;
            case 20:
                Last(Corners, reader).Y = number;
                return true;
            case 42:
                Last(Corners, reader).Bulge = number;
                return true;
            default:
                return false;
        }
    }

    private bool TakeOfSpline(int code, double number, DxfGroupReader reader)
    {
        switch (code)
        {
            case 10:
                Add(Corners, new() { X = number }, reader);
                return true;
            case 20:
                Last(Corners, reader).Y = number;
                return true;
            case 30:
                Last(Corners, reader).Z = number;
                return true;
            case 11:
                Add(FitPoints, new() { X = number }, reader);
                return true;
            case 21:
                Last(FitPoints, reader).Y = number;
                return true;
            case 31:
                Last(FitPoints, reader).Z = number;
                return true;
            case 40:
                Add(Knots, number, reader);
                return true;
            case 41:
                Add(Weights, number, reader);
                return true;
            default:
                return false;
        }
    }

    private void Add<T>(List<T> list, T entry, DxfGroupReader reader)
    {
        if (list.Count >= curves.Settings.Limits.Segments)
            throw curves.TooManySegments(reader.Where);
        list.Add(entry);
    }

    private static ref DxfCorner Last(List<DxfCorner> corners, DxfGroupReader reader)
    {
        if (corners.Count == 0)
            throw reader.Error(
                $"Group code {reader.Code} belongs to a corner, but none has begun with an x coordinate."
            );
        return ref CollectionsMarshal.AsSpan(corners)[^1];
    }

    private void Keep(int code, double number)
    {
        _numbers[code] = number;
        _readIn[code] = _entity;
    }

    /// <summary>Most entities lie on the layer of the one before: no new text for those.</summary>
    private string LayerOf(ReadOnlySpan<byte> name)
    {
        if (!name.SequenceEqual(_layerBytes))
        {
            _layerBytes = name.ToArray();
            _layer = DxfText.Decoded(name);
        }
        return _layer;
    }
}
