namespace PatternGen;

/// <summary>The carved surface along a section, as corners: exact where walls meet, in chords where it is curved.</summary>
internal sealed class SectionProfile
{
    /// <summary>How far in mm a chord may miss a curved stretch: a tenth of the finest line that is drawn.</summary>
    internal const double Accuracy = 0.005;

    /// <summary>Halvings of a stretch at most.</summary>
    private const int MostHalvings = 12;

    /// <summary>Shares of a stretch that are compared with the chord: a curve that bends twice misses its chord at one of them.</summary>
    private static readonly double[] Probes = [0.5, 0.21, 0.79];

    private readonly SectionLine _line;
    private readonly List<SectionPlace> _places = [];

    internal SectionProfile(SectionLine line, IReadOnlyList<SectionStretch> stretches)
    {
        _line = line;
        Cuts = [.. stretches.Select(CutOf)];
        var breaks = line.Sorted(
            stretches.SelectMany(stretch => stretch.Breaks).Append(0).Append(line.Length)
        );
        var first = 0;
        for (var i = 0; i + 1 < breaks.Count; i++)
        {
            var middle = 0.5 * (breaks[i] + breaks[i + 1]);
            while (first < stretches.Count && stretches[first].End < middle)
                first++;
            var here = new List<SectionStretch>();
            for (var j = first; j < stretches.Count && stretches[j].Start < middle; j++)
                if (stretches[j].End > middle)
                    here.Add(stretches[j]);
            AddPiece(breaks[i], breaks[i + 1], here);
        }
    }

    /// <summary>Depths in mm that differ less are the same: by how much the steepest wall, of 85 degrees, falls within the distance at which places are one, twice.</summary>
    private double Rounding => 24 * _line.Near;

    /// <summary>From start to end; where a wall is upright, two places at one distance follow each other.</summary>
    internal IReadOnlyList<SectionPlace> Places => _places;

    internal IReadOnlyList<SectionCut> Cuts { get; }

    /// <summary>The depth in mm at a distance along a profile; of two at an upright wall, that of the second.</summary>
    internal static double DepthAt(IReadOnlyList<SectionPlace> places, double along)
    {
        var at = 0;
        while (at + 2 < places.Count && places[at + 1].Along <= along)
            at++;
        var (start, end) = (places[at], places[at + 1]);
        var share = Math.Clamp((along - start.Along) / (end.Along - start.Along), 0, 1);
        return start.Depth + (end.Depth - start.Depth) * share;
    }

    private void AddPiece(double from, double to, List<SectionStretch> here)
    {
        // Where chips overlap, the deepest is what is left.
        double DepthAt(double along)
        {
            var point = _line.At(along);
            double deepest = 0;
            foreach (var stretch in here)
                deepest = Math.Max(deepest, stretch.DepthAt(point));
            return deepest;
        }

        // On the outline itself rounding tells whether a point is inside; a little way in it does not.
        var inset = Math.Min(_line.Near, (to - from) / 4);
        var first = new SectionPlace(from, Math.Max(DepthAt(from), DepthAt(from + inset)));
        var last = new SectionPlace(to, Math.Max(DepthAt(to), DepthAt(to - inset)));
        Add(first);
        AddBetween(first, last, MostHalvings);
        Add(last);

        void AddBetween(SectionPlace start, SectionPlace end, int halvings)
        {
            if (halvings == 0 || here.Count == 0 || IsChord(start, end))
                return;
            var middle = 0.5 * (start.Along + end.Along);
            var place = new SectionPlace(middle, DepthAt(middle));
            AddBetween(start, place, halvings - 1);
            Add(place);
            AddBetween(place, end, halvings - 1);
        }

        bool IsChord(SectionPlace start, SectionPlace end)
        {
            foreach (var share in Probes)
            {
                var along = start.Along + (end.Along - start.Along) * share;
                var chord = start.Depth + (end.Depth - start.Depth) * share;
                if (Math.Abs(DepthAt(along) - chord) > Accuracy)
                    return false;
            }
            return true;
        }
    }

    private void Add(SectionPlace place)
    {
        if (place.Depth <= Rounding)
            place = new(place.Along, 0);
        var isThere =
            _places.Count > 0
            && _places[^1].Along == place.Along
            && Math.Abs(_places[^1].Depth - place.Depth) <= Rounding;
        if (!isThere)
            _places.Add(place);
    }

    /// <summary>Searches the deepest place of a chip on the line: at a break, or on top of a curve between two.</summary>
    private SectionCut CutOf(SectionStretch stretch)
    {
        var best = new List<SectionPlace>();
        for (var i = 0; i + 1 < stretch.Breaks.Count; i++)
        {
            var (from, to) = (stretch.Breaks[i], stretch.Breaks[i + 1]);
            var inset = Math.Min(_line.Near, (to - from) / 4);
            Try(from + inset);
            Try(Top(stretch, from, to));
            Try(to - inset);
        }
        var (first, last) = (best.Min(place => place.Along), best.Max(place => place.Along));
        return new(
            stretch.Chip,
            stretch.Start,
            stretch.End,
            new(0.5 * (first + last), best[0].Depth)
        );

        void Try(double along)
        {
            var place = new SectionPlace(along, stretch.DepthAt(_line.At(along)));
            if (best.Count > 0 && place.Depth > best[0].Depth + Rounding)
                best.Clear();
            if (best.Count == 0 || place.Depth >= best[0].Depth - Rounding)
                best.Add(place);
        }
    }

    /// <summary>Where a smooth curve without two tops is deepest, by thirds.</summary>
    private double Top(SectionStretch stretch, double from, double to)
    {
        while (to - from > _line.Near)
        {
            var (a, b) = (from + (to - from) / 3, to - (to - from) / 3);
            if (stretch.DepthAt(_line.At(a)) > stretch.DepthAt(_line.At(b)))
                to = b;
            else
                from = a;
        }
        return 0.5 * (from + to);
    }
}
