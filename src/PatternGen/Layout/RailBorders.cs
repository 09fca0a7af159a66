using System.Collections;
using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The borders of a set of rails, in the order of the rails.</summary>
/// <remarks>Fitted when first needed. Immutable and safe to share between threads.</remarks>
public sealed class RailBorders : IReadOnlyList<RailBorder>
{
    private readonly IReadOnlyList<(Rail Rail, double FromEdge)> _places;
    private readonly TriangleBand _band;
    private readonly Fitting _fitting;
    private readonly bool _samePitch;
    private readonly RailBorder[] _borders;

    internal RailBorders(
        IReadOnlyList<(Rail Rail, double FromEdge)> places,
        TriangleBand band,
        Fitting fitting,
        bool samePitch
    )
    {
        _places = places;
        _band = band;
        _fitting = fitting;
        _samePitch = samePitch;
        var shared = new Lazy<double>(FindSharedPitch);
        _borders =
        [
            .. places.Select(place => new RailBorder(
                place.Rail,
                band,
                place.FromEdge,
                FittingOfEach(),
                samePitch ? () => shared.Value : null
            )),
        ];
    }

    /// <inheritdoc/>
    public int Count => _borders.Length;

    /// <summary>Gets the border of a rail.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such rail.</exception>
    public RailBorder this[int index] => _borders[Guard.Within(index, 0, _borders.Length - 1)];

    /// <summary>Returns the borders with the same length left uncarved at both ends of each rail.</summary>
    /// <param name="margin">In mm, 0 or more.</param>
    [Pure]
    public RailBorders EndMargins(double margin) => Fitted(fitting => fitting.EndMargins(margin));

    /// <summary>Returns the borders fitted as described.</summary>
    /// <param name="describe">Changes the fitting so far, for all rails.</param>
    [Pure]
    public RailBorders Fitted(Func<Fitting, Fitting> describe) =>
        new(_places, _band, Guard.NotNull(describe)(_fitting), _samePitch);

    /// <inheritdoc/>
    public IEnumerator<RailBorder> GetEnumerator() => _borders.AsEnumerable().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private Fitting FittingOfEach() => _samePitch ? _fitting.ForSharedPitch(_band) : _fitting;

    private double FindSharedPitch()
    {
        FitSolver[] solvers =
        [
            .. _places.Select(place => new FitSolver(place.Rail.Length, _band, FittingOfEach())),
        ];
        return SharedPitch.Find([.. solvers.Select(solver => solver.Question)], _fitting.PitchStep);
    }
}
