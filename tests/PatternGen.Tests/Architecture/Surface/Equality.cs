namespace PatternGen.Tests.Architecture.Surface;

/// <summary>Values that compare by content do so with == as well, or == would quietly compare references.</summary>
internal static class Equality
{
    public static IEnumerable<string> Violations(IEnumerable<Type> types) =>
        types
            .Where(type => !type.IsInterface && ComparesByContent(type))
            .Where(type => type.GetMethod("op_Equality", [type, type]) is null)
            .Select(type => $"{type.Name} is equatable and has no ==");

    private static bool ComparesByContent(Type type) =>
        type.GetInterfaces()
            .Any(implemented =>
                implemented.IsGenericType
                && implemented.GetGenericTypeDefinition() == typeof(IEquatable<>)
                && implemented.GenericTypeArguments[0] == type
            );
}
