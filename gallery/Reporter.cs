using PatternGen.Gallery.Topics;
using Spectre.Console;

namespace PatternGen.Gallery;

/// <summary>Runs a topic and says what is made: with a bar on a terminal, in plain lines elsewhere.</summary>
internal static class Reporter
{
    internal static async Task RunAsync(ITopic topic, CancellationToken cancellation)
    {
        MakeFolder(topic.Folder);
        if (Console.IsOutputRedirected)
            await MakeAsync(topic, work => Say(FileOf(topic, work)), cancellation);
        else
        {
            await WithBarAsync(topic, cancellation);
            foreach (var work in topic.Works)
                Say(FileOf(topic, work));
        }
        foreach (var caption in topic.Exhibits.Take(1).Select(exhibit => exhibit.Caption))
            Say($"  {caption}");
    }

    internal static void Say(string line) => Console.WriteLine(line);

    private static void MakeFolder(string folder)
    {
        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new IOException(
                $"The folder '{folder}' can't be made ({error.Message.TrimEnd('.')}); choose another with --out.",
                error
            );
        }
    }

    private static Task WithBarAsync(ITopic topic, CancellationToken cancellation) =>
        AnsiConsole
            .Progress()
            .StartAsync(async progress =>
            {
                var bar = progress.AddTask(Markup.Escape(topic.Title), maxValue: topic.Works.Count);
                await MakeAsync(topic, _ => bar.Increment(1), cancellation);
            });

    private static string FileOf(ITopic topic, Work work) => Path.Combine(topic.Folder, work.File);

    private static async Task MakeAsync(
        ITopic topic,
        Action<Work> done,
        CancellationToken cancellation
    )
    {
        foreach (var work in topic.Works)
        {
            await work.Make(FileOf(topic, work), cancellation);
            done(work);
        }
    }
}
