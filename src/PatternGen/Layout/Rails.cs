using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The rails of one piece, to be carved with the same band.</summary>
/// <remarks>Each method returns a changed copy. Immutable and safe to share between threads.</remarks>
public sealed class Rails
{
    private readonly double[] _lengths;
    private readonly Rail[]? _rails;
    private readonly bool _samePitch;

    private Rails(double[] lengths, Rail[]? rails, bool samePitch)
    {
        _lengths = lengths;
        _rails = rails;
        _samePitch = samePitch;
    }

    /// <summary>Returns rails of the given lengths; <see cref="Wide"/> gives them their width.</summary>
    /// <param name="lengths">Lengths seen between the shoulders, in mm.</param>
    /// <exception cref="ArgumentException">There is no length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is not positive.</exception>
    public static Rails Of(params double[] lengths)
    {
        double[] seen = [.. Guard.NotNull(lengths).Select(length => Guard.Positive(length))];
        return seen.Length > 0
            ? new(seen, null, false)
            : throw new ArgumentException("A set of rails has at least one.", nameof(lengths));
    }

    /// <summary>Returns the given rails as a set; they may have different widths.</summary>
    /// <exception cref="ArgumentException">There is no rail.</exception>
    public static Rails Of(params Rail[] rails)
    {
        Rail[] all = [.. Guard.NotNull(rails).Select(rail => Guard.NotNull(rail))];
        return all.Length > 0
            ? new([.. all.Select(rail => rail.Length)], all, false)
            : throw new ArgumentException("A set of rails has at least one.", nameof(rails));
    }

    /// <summary>Returns the rails, all of the given width.</summary>
    /// <param name="width">In mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is not positive.</exception>
    [Pure]
    public Rails Wide(double width)
    {
        Guard.Positive(width);
        return new(
            _lengths,
            _rails is null
                ? [.. _lengths.Select(length => Rail.Of(length, width))]
                : [.. _rails.Select(rail => rail.WithWidth(width))],
            _samePitch
        );
    }

    /// <summary>
    /// Returns the rails with one pitch for all: one that fills each with whole repeats if there is one within the
    /// limits, else the nearest, with the rest in the end margins. The nearest is the pitch with the least sum of what it
    /// leaves over at an end and how far it is off the nominal pitch, both in mm.
    /// </summary>
    /// <remarks>The limits are those of the fitting; if none are given, a tenth off the nominal pitch either way.</remarks>
    [Pure]
    public Rails SamePitch() => new(_lengths, _rails, samePitch: true);

    /// <summary>Returns the rails with a band carved along each.</summary>
    /// <param name="band">The band.</param>
    /// <param name="fromEdge">Distance in mm from the lower edge of each rail to the lowest rule; centred if not given.</param>
    /// <exception cref="InvalidOperationException">The rails have lengths only, no width.</exception>
    /// <exception cref="PatternException">The band does not fit across a rail.</exception>
    [Pure]
    public RailBorders Border(TriangleBand band, double? fromEdge = null)
    {
        Guard.NotNull(band);
        if (_rails is null)
            throw new InvalidOperationException(
                "These rails have lengths but no width yet; call Wide, as in Rails.Of(742.5, 418).Wide(36)."
            );
        return new(
            [.. _rails.Select(rail => (rail, rail.BandPosition(band, fromEdge)))],
            band,
            Fitting.Default,
            _samePitch
        );
    }
}
