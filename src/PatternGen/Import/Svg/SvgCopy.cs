namespace PatternGen;

/// <summary>Attributes of our own in the clean copy of a file that the object model reads.</summary>
/// <remarks>
/// The object model refuses a name that is used twice and loses its place then, and it changes names that are no URIs; so
/// names and references are kept out of its sight.
/// </remarks>
internal static class SvgCopy
{
    internal const string Name = "data-name";
    internal const string Reference = "data-reference";
    internal const string Line = "data-line";
    internal const string Label = "aria-label";
}
