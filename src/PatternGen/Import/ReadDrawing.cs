namespace PatternGen;

/// <summary>What a reader found in a file.</summary>
/// <param name="Curves">The curves and the notes.</param>
/// <param name="Unit">How many millimetres one unit of the file was taken for.</param>
/// <param name="Accuracy">How far the curves may lie off those of the file, in mm.</param>
internal sealed record ReadDrawing(ImportedCurves Curves, double Unit, double Accuracy);
