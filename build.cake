// Every step of the build, by name: `dotnet cake --target=Test`. DEVELOPERS.md says what each is for.

var target = Argument("target", "Default");
var artifacts = MakeAbsolute(Directory("artifacts"));
var packages = artifacts.Combine("packages");
var galleryOutput = MakeAbsolute(Directory("gallery/out"));

Task("Restore")
    .Does(() => DotNet("restore"));

Task("Format")
    .Does(() => DotNet("csharpier check ."));

Task("Build")
    .IsDependentOn("Restore")
    .Does(() => DotNet("build --no-restore --configuration Release -warnaserror"));

Task("Test")
    .IsDependentOn("Build")
    .Does(() =>
    {
        var results = artifacts.Combine("test-results");
        CleanDirectory(results);
        DotNet($"test --no-build --configuration Release --report-xunit-trx --results-directory \"{results}\"");
    });

Task("Pack")
    .IsDependentOn("Build")
    .Does(() =>
    {
        CleanDirectory(packages);
        DotNet($"pack src/PatternGen --no-build --configuration Release --output \"{packages}\"");
    });

// A stranger's project, out of the tree: it must find all that it needs in the package and its dependencies.
Task("Consume")
    .IsDependentOn("Pack")
    .Does(() =>
    {
        var scratch = MakeAbsolute(Directory(System.IO.Directory.CreateTempSubdirectory("consume-").FullName));
        try
        {
            CopyFiles("tests/consume/*", scratch);
            // Its own package folder, since the usual one may hold an older build of the same version.
            DotNet(
                "build --configuration Release"
                    + $" -p:PatternGenVersion={PackedVersion()}"
                    + $" -p:RestoreAdditionalProjectSources=\"{packages}\""
                    + $" -p:RestorePackagesPath=\"{scratch.Combine("packages")}\"",
                scratch);
            DotNet("exec bin/Release/net10.0/Consume.dll", scratch);
            Require(FileExists(scratch.CombineWithFilePath("rail.svg")), "the consumer wrote no rail.svg");
        }
        finally
        {
            DeleteDirectory(scratch, new DeleteDirectorySettings { Recursive = true });
        }
    });

// Needs clang. First the analysers over all of the library, then one program compiled ahead of time, and run.
Task("Aot")
    .Does(() =>
    {
        var analysis = artifacts.Combine("aot-analysis");
        CleanDirectory(analysis);
        // The analysers' package follows the SDK: it may not enter the lock file, nor the usual build's folders.
        DotNet(
            "build src/PatternGen --configuration Release -warnaserror -p:IsAotCompatible=true"
                + $" -p:RestoreLockedMode=false -p:NuGetLockFilePath=\"{analysis.CombineWithFilePath("packages.lock.json")}\""
                + $" -p:ArtifactsPath=\"{analysis}\"");

        var program = artifacts.Combine("aot");
        CleanDirectory(program);
        DotNet($"publish tests/aot --configuration Release -warnaserror --output \"{program}\"");
        Run(program.CombineWithFilePath("PatternGen.Aot").FullPath, "", program);
    });

// Twice, the second time without a single font: no output may need one, so both runs must write the same.
Task("Gallery")
    .IsDependentOn("Build")
    .Does(() =>
    {
        CleanDirectory(galleryOutput);
        DotNet("run --no-build --configuration Release --project gallery");

        var fontless = artifacts.Combine("gallery-without-fonts");
        CleanDirectory(fontless);
        var noFonts = artifacts.CombineWithFilePath("no-fonts.conf").FullPath;
        System.IO.File.WriteAllText(noFonts, "<?xml version=\"1.0\"?>\n<fontconfig/>\n");
        DotNet(
            $"run --no-build --configuration Release --project gallery -- all --out \"{fontless}\"",
            environment: new Dictionary<string, string> { ["FONTCONFIG_FILE"] = noFonts });

        foreach (var file in GetFiles($"{galleryOutput}/**/*.svg").Union(GetFiles($"{galleryOutput}/**/*.dxf")))
        {
            var twin = fontless.CombineWithFilePath(galleryOutput.GetRelativePath(file));
            Require(FileExists(twin) && SameBytes(file, twin), $"without fonts, {twin} differs from {file}");
        }
    });

// Nightly: damaged files of every kind that is read, far more of them than the tests try each time. --cases sets the number.
Task("Fuzz")
    .IsDependentOn("Build")
    .Does(() => Run(
        "dotnet",
        "exec tests/PatternGen.Tests/bin/Release/net10.0/PatternGen.Tests.dll -class \"*Fuzz*\" -class \"*HostileRecipe*\"",
        environment: new Dictionary<string, string> { ["PATTERNGEN_FUZZ"] = Argument("cases", "100000") }));

// Needs the readers that tests/readers/README.md names.
Task("Readers")
    .IsDependentOn("Gallery")
    .Does(() => Run("/usr/bin/python3", $"-B tests/readers/read_gallery.py \"{galleryOutput}\""));

// The rail program compiled ahead, as a program that must start fast is shipped; StartBench measures it beside the usual one.
Task("Precompile")
    .Does(() =>
    {
        var start = artifacts.Combine("start");
        CleanDirectory(start);
        // The compiler's package follows the SDK: it may not enter the lock files, nor the usual build's folders.
        DotNet(
            "publish tests/bench/programs/OneRail --configuration Release --use-current-runtime --self-contained false"
                + " -p:PublishReadyToRun=true -p:RestoreLockedMode=false"
                + $" -p:NuGetLockFilePath=\"{start}/lock/$(MSBuildProjectName).json\""
                + $" -p:ArtifactsPath=\"{start}/build\" --output \"{start}\"");
    });

Task("Bench")
    .IsDependentOn("Precompile")
    .Does(() => DotNet($"run --configuration Release --project tests/bench -- --filter {Argument("filter", "*")}"));

Task("Default")
    .IsDependentOn("Format")
    .IsDependentOn("Test")
    .IsDependentOn("Consume")
    .IsDependentOn("Gallery");

RunTarget(target);

void DotNet(string arguments, DirectoryPath folder = null, IDictionary<string, string> environment = null) =>
    Run("dotnet", arguments, folder, environment);

void Run(string program, string arguments, DirectoryPath folder = null, IDictionary<string, string> environment = null)
{
    var settings = new ProcessSettings
    {
        Arguments = arguments,
        WorkingDirectory = folder,
        EnvironmentVariables = environment,
    };
    Require(StartProcess(program, settings) == 0, $"{program} {arguments} failed");
}

void Require(bool condition, string otherwise)
{
    if (!condition)
        throw new CakeException(otherwise);
}

string PackedVersion() =>
    GetFiles($"{packages}/PatternGen.*.nupkg").Single().GetFilenameWithoutExtension().FullPath["PatternGen.".Length..];

bool SameBytes(FilePath first, FilePath second) =>
    System.IO.File.ReadAllBytes(first.FullPath).AsSpan().SequenceEqual(System.IO.File.ReadAllBytes(second.FullPath));
