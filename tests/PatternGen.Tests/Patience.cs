namespace PatternGen.Tests;

/// <summary>For work that must not grow as the square of its size: sizes are such that it would then not end in a test's lifetime.</summary>
internal static class Patience
{
    private static readonly TimeSpan Limit = TimeSpan.FromMinutes(5);

    /// <summary>Fails if the work does not end within minutes. Seconds would measure the machine, and what else it does.</summary>
    internal static Task WithinMinutes(Action work) =>
        Task.Run(work, TestContext.Current.CancellationToken)
            .WaitAsync(Limit, TestContext.Current.CancellationToken);
}
