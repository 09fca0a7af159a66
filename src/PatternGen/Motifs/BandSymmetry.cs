namespace PatternGen;

/// <summary>Finds the symmetry of a band from its rows, as if it ran on for ever.</summary>
internal static class BandSymmetry
{
    internal static FriezeGroup GroupOf(TriangleBand band)
    {
        var rows = FormsOf(band);
        var upsideDown = UpsideDown(rows);
        var upright = Same(rows, rows.Select(row => row.Mirrored()));
        var along = Same(rows, upsideDown);
        var glide = !along && Same(rows, upsideDown.Select(row => row.Shifted()));
        // A half turn may have its centre at the middle of a chip, or a quarter pitch on, which swaps the phases.
        var halfTurn =
            HasHalfTurn(band, swapsPhases: false) || HasHalfTurn(band, swapsPhases: true);
        return (upright, along, glide, halfTurn) switch
        {
            (true, true, _, _) => FriezeGroup.P2mm,
            (true, _, true, _) => FriezeGroup.P2mg,
            (true, _, _, _) => FriezeGroup.P1m1,
            (_, true, _, _) => FriezeGroup.P11m,
            (_, _, true, _) => FriezeGroup.P11g,
            (_, _, _, true) => FriezeGroup.P2,
            _ => FriezeGroup.P1,
        };
    }

    /// <summary>Whether a half turn takes the rows into each other, rows in step into rows in step or, swapped, into staggered ones.</summary>
    internal static bool HasHalfTurn(TriangleBand band, bool swapsPhases)
    {
        var rows = FormsOf(band);
        var turned = UpsideDown(rows).Select(row => row.Mirrored());
        return Same(rows, swapsPhases ? turned.Select(row => row.Shifted()) : turned);
    }

    private static Form[] FormsOf(TriangleBand band) =>
        [.. band.Rows.Select(row => Form.Of(row, band))];

    private static Form[] UpsideDown(Form[] rows)
    {
        var sum = rows.Min(row => row.Low) + rows.Max(row => row.High);
        return [.. rows.Select(row => row.Flipped(sum))];
    }

    private static bool Same(IEnumerable<Form> a, IEnumerable<Form> b) =>
        a.Order().SequenceEqual(b.Order());

    /// <summary>A row as symmetry sees it: where it lies and how its chips look.</summary>
    private readonly record struct Form(
        double Low,
        double High,
        Pointing Pointing,
        bool IsStaggered,
        double Lean,
        double Left,
        double Right,
        double Base,
        double Gap,
        ChipCut Cut
    ) : IComparable<Form>
    {
        /// <summary>Heights that differ less than this share of a millimetre are the same rule read twice.</summary>
        private const int HeightDecimals = 9;

        internal static Form Of(TriangleRow row, TriangleBand band) =>
            new(
                Math.Round(band.Rules[row.LowerRule], HeightDecimals),
                Math.Round(band.Rules[row.UpperRule], HeightDecimals),
                row.Pointing,
                row.IsStaggered,
                row.Lean,
                row.LeftSagitta,
                row.RightSagitta,
                row.BaseSagitta,
                row.Gap,
                row.Cut
            );

        internal Form Mirrored() => this with { Lean = -Lean, Left = Right, Right = Left };

        internal Form Shifted() => this with { IsStaggered = !IsStaggered };

        internal Form Flipped(double sum) =>
            this with
            {
                Low = Math.Round(sum - High, HeightDecimals),
                High = Math.Round(sum - Low, HeightDecimals),
                Pointing = Pointing == Pointing.Up ? Pointing.Down : Pointing.Up,
            };

        public int CompareTo(Form other) =>
            (Low, High, (int)Pointing, IsStaggered, Lean).CompareTo(
                (other.Low, other.High, (int)other.Pointing, other.IsStaggered, other.Lean)
            );
    }
}
