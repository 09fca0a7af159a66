namespace PatternGen.Tests.Output.Saving;

public sealed class SavingFailureTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_read_only_file_stays_as_it_was()
    {
        var path = _folder.File("old.svg");
        File.WriteAllText(path, "old");
        File.SetAttributes(path, FileAttributes.ReadOnly);
        var error = Should.Throw<IOException>(() => Samples.Rail().Save(path));
        error.Message.ShouldContain("read-only");
        error.Message.ShouldContain(path);
        File.SetAttributes(path, FileAttributes.Normal);
        File.ReadAllText(path).ShouldBe("old");
        _folder.Names.ShouldBe(["old.svg"]);
    }

    [Fact]
    public void A_missing_folder_is_named()
    {
        var path = _folder.File("missing", "rail.svg");
        var error = Should.Throw<IOException>(() => Samples.Rail().Save(path));
        error.Message.ShouldContain(path);
        error.Message.ShouldContain("create the folder");
        _folder.Names.ShouldBeEmpty();
    }

    [Fact]
    public void A_folder_in_the_files_place_is_refused()
    {
        Directory.CreateDirectory(_folder.File("rail.svg"));
        Should
            .Throw<IOException>(() => Samples.Rail().Save(_folder.File("rail.svg")))
            .Message.ShouldContain("folder");
        _folder.Names.ShouldBe(["rail.svg"]);
    }

    /// <summary>On Linux nobody, not even root, may make a file under /sys.</summary>
    [Fact]
    public void A_folder_that_may_not_be_written_to_is_refused()
    {
        if (!Directory.Exists("/sys/kernel"))
            Assert.Skip("Needs /sys, which Linux has.");
        Should
            .Throw<IOException>(() => Samples.Rail().Save("/sys/kernel/rail.svg"))
            .Message.ShouldContain("/sys/kernel/rail.svg");
    }

    [Fact]
    public void What_fails_half_way_leaves_the_old_file()
    {
        var path = _folder.File("rail.svg");
        File.WriteAllText(path, "old");
        var speck = Contour.Polygon(new(50, 20), new(50.0000001, 20), new(50, 20.0000001));
        var pattern = Samples.Rail(30_000).With(Pattern.OfChips(speck));
        Should.Throw<PatternException>(() => pattern.Save(path));
        File.ReadAllText(path).ShouldBe("old");
        _folder.Names.ShouldBe(["rail.svg"]);
    }

    /// <summary>On Linux /dev/full is a disk that is always full.</summary>
    [Fact]
    public void A_full_disk_is_one_error_and_a_device_stays_a_device()
    {
        if (!File.Exists("/dev/full"))
            Assert.Skip("Needs /dev/full, which Linux has.");
        var link = _folder.File("full.svg");
        File.CreateSymbolicLink(link, "/dev/full");
        Should.Throw<IOException>(() => Samples.Rail().Save(link)).Message.ShouldContain("space");
        Should.Throw<IOException>(() => File.WriteAllText("/dev/full", "x"));
        _folder.Names.ShouldBe(["full.svg"]);
    }

    [Fact]
    public void A_device_is_written_to_and_not_replaced()
    {
        if (!File.Exists("/dev/null"))
            Assert.Skip("Needs /dev/null, which Unix has.");
        var link = _folder.File("null.svg");
        File.CreateSymbolicLink(link, "/dev/null");
        Samples.Rail().Save(link);
        new FileInfo("/dev/null").Length.ShouldBe(0);
    }

    [Fact]
    public void A_link_is_followed()
    {
        File.WriteAllText(_folder.File("real.svg"), "old");
        foreach (var target in new[] { "real.svg", "new.svg" })
        {
            var link = _folder.File("link.svg");
            File.Delete(link);
            File.CreateSymbolicLink(link, target);
            Samples.Rail().Save(link);
            File.ReadAllText(_folder.File(target)).ShouldEndWith("</svg>\n");
            new FileInfo(link).LinkTarget.ShouldBe(target);
        }
    }

    [Fact]
    public void Who_may_read_a_file_stays_as_it_was()
    {
        if (OperatingSystem.IsWindows())
            Assert.Skip("Needs the file modes of Unix.");
        else
        {
            const UnixFileMode mode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            var path = _folder.File("rail.svg");
            File.WriteAllText(path, "old");
            File.SetUnixFileMode(path, mode);
            Samples.Rail().Save(path);
            File.GetUnixFileMode(path).ShouldBe(mode);
        }
    }
}
