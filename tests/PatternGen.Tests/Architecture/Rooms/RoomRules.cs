using System.Runtime.CompilerServices;
using Mono.Cecil;

namespace PatternGen.Tests.Architecture.Rooms;

/// <summary>
/// The rule of the house: a room uses only itself and the rooms before it. What the compiler copies instead of
/// referring to it, a constant's value, leaves no trace in the assembly and is not seen.
/// </summary>
internal static class RoomRules
{
    public static readonly string[] Order =
    [
        "Geometry",
        "Compass",
        "Chips",
        "Patterns",
        "Motifs",
        "Layout",
        "Carving",
        "Output",
        "Import",
    ];

    /// <summary>Lists, in words, what breaks the rule; nothing where all is well.</summary>
    public static IReadOnlyList<string> Violations(
        string assemblyPath,
        string sourceFolder,
        string rootNamespace
    )
    {
        var map = RoomMap.Read(assemblyPath, sourceFolder);
        using var module = ModuleDefinition.ReadModule(assemblyPath);
        return
        [
            .. module
                .Types.Where(type => IsWrittenByHand(type) && IsWithin(type, rootNamespace))
                .SelectMany(type => ViolationsOf(type, map))
                .Order(StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<string> ViolationsOf(TypeDefinition type, RoomMap map)
    {
        var rooms = map.RoomsOf(type.MetadataToken.ToInt32());
        if (rooms.Count != 1 || !Order.Contains(rooms.Single()))
            return [$"{type.Name} stands in {Describe(rooms)}"];

        var room = rooms.Single();
        return TypeReferences
            .From(type)
            .Select(Outermost)
            .Distinct()
            .SelectMany(used =>
                map.RoomsOf(used.MetadataToken.ToInt32()).Select(usedRoom => (used, usedRoom))
            )
            .Where(use => Array.IndexOf(Order, use.usedRoom) > Array.IndexOf(Order, room))
            .Select(use => $"{room}/{type.Name} uses {use.usedRoom}/{use.used.Name}");
    }

    private static string Describe(IReadOnlyCollection<string> rooms) =>
        rooms.Count == 0 ? "no room" : string.Join(" and ", rooms);

    private static TypeDefinition Outermost(TypeDefinition type) =>
        type.DeclaringType is { } outer ? Outermost(outer) : type;

    private static bool IsWithin(TypeDefinition type, string rootNamespace) =>
        type.Namespace == rootNamespace
        || type.Namespace.StartsWith(rootNamespace + ".", StringComparison.Ordinal);

    private static bool IsWrittenByHand(TypeDefinition type) =>
        type.CustomAttributes.All(attribute =>
            attribute.AttributeType.Name != nameof(CompilerGeneratedAttribute)
        );
}
