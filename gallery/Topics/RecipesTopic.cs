namespace PatternGen.Gallery.Topics;

/// <summary>What recipe files describe: of each an SVG, a DXF and a picture, named like the file.</summary>
internal sealed class RecipesTopic : ITopic
{
    private readonly (string Name, Pattern Pattern)[] _recipes;

    /// <param name="files">The recipe files.</param>
    /// <param name="folder">Where to.</param>
    /// <exception cref="ImportException">A file is no recipe.</exception>
    internal RecipesTopic(IEnumerable<string> files, string folder)
    {
        _recipes =
        [
            .. files.Select(file =>
                (Path.GetFileNameWithoutExtension(file), Recipe.Load(file).Pattern)
            ),
        ];
        Folder = folder;
    }

    public string Title => "Recipes";

    public string Folder { get; }

    public IReadOnlyList<Work> Works =>
        [
            .. _recipes.SelectMany(recipe =>
                (Work[])
                    [
                        new(
                            $"{recipe.Name}.svg",
                            (path, stop) => recipe.Pattern.SaveAsync(path, cancellation: stop)
                        ),
                        new(
                            $"{recipe.Name}.dxf",
                            (path, stop) => recipe.Pattern.SaveAsync(path, cancellation: stop)
                        ),
                        Work.Picture($"{recipe.Name}.png", Folder, of: $"{recipe.Name}.svg"),
                    ]
            ),
        ];

    public IReadOnlyList<Exhibit> Exhibits =>
        [
            .. _recipes.Select(recipe => new Exhibit(
                $"{recipe.Name}.png",
                string.Join(". ", recipe.Pattern.Caption()),
                [$"{recipe.Name}.svg", $"{recipe.Name}.dxf"]
            )),
        ];
}
