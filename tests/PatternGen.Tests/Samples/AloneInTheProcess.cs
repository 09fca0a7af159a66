namespace PatternGen.Tests.Samples;

/// <summary>Tests that change what the whole process shares, such as the working folder.</summary>
[CollectionDefinition(nameof(AloneInTheProcess), DisableParallelization = true)]
public class AloneInTheProcess;
