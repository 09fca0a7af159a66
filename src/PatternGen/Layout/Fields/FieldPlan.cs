namespace PatternGen;

/// <summary>A field worked out: its chips, and how the cells came out.</summary>
internal sealed record FieldPlan(PatternNode Chips, FieldFit Fit);
