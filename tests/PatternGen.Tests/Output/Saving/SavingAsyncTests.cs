namespace PatternGen.Tests.Output.Saving;

public sealed class SavingAsyncTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task The_same_file_is_written()
    {
        Samples.Rail().Save(_folder.File("a.svg"));
        var result = await Samples.Rail().SaveAsync(_folder.File("b.svg"), cancellation: Token);
        result.ChipCount.ShouldBe(182);
        File.ReadAllBytes(_folder.File("b.svg")).ShouldBe(File.ReadAllBytes(_folder.File("a.svg")));
    }

    [Fact]
    public async Task A_stream_that_insists_on_asynchronous_writing_gets_it()
    {
        using var file = new MemoryStream();
        var stream = new OneWayStream(file, refusesSynchronous: true);
        await Samples
            .Rail(30_000)
            .SaveAsync(stream, FileFormat.Svg, For.Viewing, cancellation: Token);
        file.ToArray()[^7..].ShouldBe("</svg>\n"u8.ToArray());
    }

    [Fact]
    public async Task Stopping_leaves_no_file_and_the_old_one_as_it_was()
    {
        var path = _folder.File("rail.svg");
        await File.WriteAllTextAsync(path, "old", Token);
        foreach (var isAtOnce in new[] { true, false })
        {
            using var stop = new CancellationTokenSource();
            // The caption is asked for while the file is being written. Waiting a while could come too late.
            var half = SaveOptions.Default.WithWording(new StoppingWording(stop.Cancel));
            if (isAtOnce)
                await stop.CancelAsync();
            await Should.ThrowAsync<OperationCanceledException>(
                Samples.Rail(900_000).SaveAsync(path, half, cancellation: stop.Token)
            );
            (await File.ReadAllTextAsync(path, Token)).ShouldBe("old");
            _folder.Names.ShouldBe(["rail.svg"]);
        }
    }

    [Fact]
    public async Task Stopping_stops_a_stream_half_way()
    {
        using var stop = new CancellationTokenSource();
        using var file = new MemoryStream();
        var stream = new OneWayStream(file, onWrite: stop.Cancel);
        await Should.ThrowAsync<OperationCanceledException>(
            Samples
                .Rail(900_000)
                .SaveAsync(stream, FileFormat.Svg, For.Viewing, cancellation: stop.Token)
        );
        file.Length.ShouldBeLessThan(200_000);
        stream.CanWrite.ShouldBeTrue();
    }

    [Fact]
    public async Task Errors_are_those_of_saving()
    {
        await Should.ThrowAsync<IOException>(
            Samples.Rail().SaveAsync(_folder.File("missing", "rail.svg"), cancellation: Token)
        );
        Should.Throw<ArgumentException>(() =>
            Samples.Rail().SaveAsync("rail.pdf", cancellation: Token)
        );
    }

    private sealed class StoppingWording(Action stop) : Wording
    {
        public override string ChipCount(long count)
        {
            stop();
            return base.ChipCount(count);
        }
    }
}
