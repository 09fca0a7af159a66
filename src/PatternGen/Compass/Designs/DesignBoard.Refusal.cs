namespace PatternGen;

// What to say where there is more to choose from than a mask holds.
internal sealed partial class DesignBoard
{
    private void RefuseTooMany()
    {
        if (Choices.Length > MaxChoices)
            throw new PatternException(
                FormattableString.Invariant(
                    $"Keeping {Keep}, the figure has {Choices.Length} orbits to choose from, more than the {MaxChoices} that designs are told apart by."
                ),
                remedies: [.. SymmetriesThatHelp(), "a drawing of fewer lines"]
            );
    }

    /// <summary>The symmetries that leave something to choose from, but not too much; what is kept already is none of them.</summary>
    private IEnumerable<string> SymmetriesThatHelp() =>
        Symmetry
            .DivisorsOf(Figure.Symmetry.Order)
            .Select(Symmetry.TurnsOf)
            .Prepend(Symmetry.Full)
            .Select(keep => (Keep: keep, Choices: ChoicesKeeping(keep)))
            .Where(other => other.Choices is > 0 and <= MaxChoices)
            .Select(other =>
                FormattableString.Invariant(
                    $"keep {other.Keep}: {other.Choices} {(other.Choices == 1 ? "orbit" : "orbits")} to choose from"
                )
            );

    private int ChoicesKeeping(Symmetry keep) =>
        OrbitsUnder(Figure, keep.TurnsIn(Figure.Symmetry), keep.IsFull).Count(IsChoice);
}
