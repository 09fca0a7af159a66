namespace PatternGen;

/// <summary>The note in a file for a machine: what it is, how large and in which unit, for whoever opens it later.</summary>
internal static class MachineNote
{
    internal static Label? Place(Pattern pattern, Wording wording) => null;
}
