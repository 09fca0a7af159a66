using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Runtime.InteropServices;

namespace PatternGen.Tests.Architecture.Surface;

/// <summary>
/// Names that would make a user's program ambiguous: those of types that every program sees through the SDK's
/// implicit usings, and namespaces named like a type.
/// </summary>
internal static class NameClashes
{
    private static readonly string[] ImplicitUsings =
    [
        "System",
        "System.Collections.Generic",
        "System.IO",
        "System.Linq",
        "System.Net.Http",
        "System.Threading",
        "System.Threading.Tasks",
    ];

    private static readonly Lazy<HashSet<string>> TakenNames = new(() =>
        [
            .. Directory
                .EnumerateFiles(RuntimeEnvironment.GetRuntimeDirectory(), "*.dll")
                .SelectMany(PublicNames),
        ]
    );

    public static IEnumerable<string> WithImplicitUsings(IEnumerable<Type> types) =>
        types
            .Where(type => !type.IsNested && TakenNames.Value.Contains(WithoutArity(type.Name)))
            .Select(type => $"{type.Name} is also a name in the implicit usings");

    public static IEnumerable<string> WithNamespaces(IEnumerable<Type> types)
    {
        var written = types.Where(type => !type.Name.Contains('<')).ToArray();
        var parts = written
            .SelectMany(type => (type.Namespace ?? "").Split('.'))
            .ToHashSet(StringComparer.Ordinal);
        return written
            .Where(type => parts.Contains(WithoutArity(type.Name)))
            .Select(type => $"{type.FullName} is named like a namespace");
    }

    private static IEnumerable<string> PublicNames(string path)
    {
        using var file = new PEReader(File.OpenRead(path));
        if (!file.HasMetadata)
            return [];

        var metadata = file.GetMetadataReader();
        return
        [
            .. metadata
                .TypeDefinitions.Select(metadata.GetTypeDefinition)
                .Where(type =>
                    (type.Attributes & TypeAttributes.VisibilityMask) == TypeAttributes.Public
                )
                .Where(type => ImplicitUsings.Contains(metadata.GetString(type.Namespace)))
                .Select(type => WithoutArity(metadata.GetString(type.Name))),
        ];
    }

    private static string WithoutArity(string name) => name.Split('`')[0];
}
