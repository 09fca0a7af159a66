using PatternGen.Geometry;

namespace PatternGen;

/// <summary>One step of a compass drawing: an instruction that a person, or a program, can follow without coordinates.</summary>
/// <remarks>
/// The <see cref="Kind"/> says what is done and which of the other members matter; the rest are empty or null. What a
/// step does several times in turn, it lists: the arcs of a round are one step. Then the lists run side by side.
/// Immutable and safe to share between threads.
/// </remarks>
public sealed class CompassStep
{
    internal CompassStep(int number, StepKind kind)
    {
        Number = number;
        Kind = kind;
    }

    /// <summary>Its place in the drawing, from 1.</summary>
    public int Number { get; }

    /// <summary>What is done.</summary>
    public StepKind Kind { get; }

    /// <summary>Distance of needle and pencil in mm, exact and unrounded; null where no compass is used.</summary>
    public double? Setting { get; internal init; }

    /// <summary>Where the needle stands, in turn.</summary>
    public IReadOnlyList<MarkedPoint> Needles { get; internal init; } = [];

    /// <summary>Where it starts from, in turn.</summary>
    public IReadOnlyList<MarkedPoint> From { get; internal init; } = [];

    /// <summary>Where it goes to, in turn.</summary>
    public IReadOnlyList<MarkedPoint> To { get; internal init; } = [];

    /// <summary>A point, marked before, that arcs drawn in turn all go through between their ends; null where there is none.</summary>
    public MarkedPoint? Through { get; internal init; }

    /// <summary>The curves, drawn before, that it works on, in turn.</summary>
    public IReadOnlyList<DrawnCurve> Curves { get; internal init; } = [];

    /// <summary>The curves that those cross, in turn; where faint curves are gone over, all that they may stop at.</summary>
    public IReadOnlyList<DrawnCurve> OtherCurves { get; internal init; } = [];

    /// <summary>Which crossing is meant; null where there is only one.</summary>
    public CrossingChoice? Choice { get; internal init; }

    /// <summary>On which side arcs cross; null where it does not matter.</summary>
    public LineSide? Side { get; internal init; }

    /// <summary>Direction from the centre to a point that is marked on a circle; null elsewhere.</summary>
    public Angle? Direction { get; internal init; }

    /// <summary>How many steps are made, or into how many parts a line is divided; 0 elsewhere.</summary>
    public int Count { get; internal init; }

    /// <summary>Every how many steps of a walk a place is marked. Default 1: each.</summary>
    public int Every { get; internal init; } = 1;

    /// <summary>Whether the last step of a walk comes back to its start.</summary>
    public bool Closes { get; internal init; }

    /// <summary>The division that a setting or a walk steps off with the dividers; null elsewhere.</summary>
    public CircleDivision? Division { get; internal init; }

    /// <summary>The points that it marks, in turn. One that was marked before keeps its label.</summary>
    public IReadOnlyList<MarkedPoint> Marked { get; internal init; } = [];

    /// <summary>The lines of the figure and the guide lines that it draws, in turn; the short arcs that find places come last.</summary>
    public IReadOnlyList<DrawnCurve> Drawn { get; internal init; } = [];

    /// <summary>The edge of the work, if the needle stands outside it: there it needs scrap wood of the same thickness beside the piece. Else null.</summary>
    public DrawnCurve? OutsideOf { get; internal init; }
}
