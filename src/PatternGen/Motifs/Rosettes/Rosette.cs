namespace PatternGen;

/// <summary>A round figure drawn with the compass: petals, stars, rays, whirls and rings of circles.</summary>
/// <remarks>
/// A rosette lies round the origin, and its first point at the top. It is a compass drawing, so it has steps, faces and
/// designs. Unless its factory says otherwise, the rim is a line of the figure, and the areas between the petals are
/// faces too. Immutable and safe to share between threads.
/// </remarks>
public sealed partial class Rosette : CompassDrawing
{
    /// <summary>Fewest petals, points or rays.</summary>
    internal const int FewestParts = 3;

    /// <summary>Most petals, points or rays; of more, none is wide enough to cut.</summary>
    internal const int MostParts = 36;

    /// <summary>Most tips that meet in one point: common practice, no source. With more, the wood between them breaks out.</summary>
    internal const int MostTips = 8;

    /// <summary>Diameter in mm of the plain disc that more tips need: common practice, no source.</summary>
    internal const double LeastCentre = 1.5;

    private readonly Action<RosetteDrafting> _draw;
    private readonly Func<Wording, string> _title;

    private Rosette(
        RosetteMaking making,
        double radius,
        double centre,
        Action<RosetteDrafting> draw,
        Func<Wording, string> title
    )
        : base(pencil => draw(new(pencil)))
    {
        (Making, Radius, Centre) = (making, radius, centre);
        (_draw, _title) = (draw, title);
    }

    /// <summary>How it is made.</summary>
    public RosetteFamily Family => Making.Family;

    /// <summary>Number of petals, points or rays in one set; of a nested rosette, that of the outer one.</summary>
    public int Count => Making.Count;

    /// <summary>Radius of the rim in mm; of a rosette within a polygon, that of the circle through its corners.</summary>
    public double Radius { get; }

    /// <summary>Diameter of the disc in mm that stays plain in the middle; 0 if there is none.</summary>
    public double Centre { get; }

    /// <summary>Which method made it, and what it was asked for.</summary>
    internal RosetteMaking Making { get; }

    /// <summary>Returns what the rosette is called, for messages.</summary>
    public override string ToString() => Title(Wording.English);

    /// <summary>What the rosette is called, for captions.</summary>
    internal string Title(Wording words) => _title(words);

    private static Rosette Of(
        RosetteMaking making,
        double centre,
        Action<RosetteDrafting> draw,
        int sets = 1,
        Func<Wording, string, string>? titled = null
    ) =>
        new(
            making,
            making.Radius,
            centre,
            draw,
            words =>
            {
                var (family, count, radius) = making;
                var title = words.Rosette(family, count, radius, sets, making.Every);
                return titled is null ? title : titled(words, title);
            }
        );
}
