using System.Reflection;
using System.Runtime.CompilerServices;

namespace PatternGen.Tests.Architecture.Surface;

/// <summary>
/// Public values never change: every field is read-only, no property can be set (not even while constructing,
/// since that would go round the constructor's checks), and no property hands out a collection that can be changed.
/// </summary>
internal static class Immutability
{
    public static IEnumerable<string> Violations(IEnumerable<Type> types) =>
        types
            .Where(type => !type.IsEnum)
            .SelectMany(type =>
                OwnBases(type)
                    .SelectMany(part => ChangeableMembers(part))
                    .Select(fault => $"{type.Name}: {fault}")
            );

    private static IEnumerable<string> ChangeableMembers(Type type) =>
        [
            .. type.GetFields(Members.Declared)
                .Where(field => !field.IsInitOnly && !field.IsLiteral && !IsCache(field))
                .Select(field => $"field {field.Name} is not read-only"),
            .. type.GetProperties(Members.Declared)
                .Where(property =>
                    property.SetMethod
                        is { IsPublic: true }
                            or { IsFamily: true }
                            or { IsFamilyOrAssembly: true }
                )
                .Select(property => $"property {property.Name} can be set"),
            .. type.GetProperties(Members.Declared)
                .Where(property => property.GetMethod is { IsPublic: true })
                .Where(property => IsChangeable(property.PropertyType))
                .Select(property => $"property {property.Name} hands out a changeable collection"),
        ];

    /// <summary>
    /// A private volatile reference: something worked out from the read-only fields when first asked for, and
    /// published whole. Two threads may both work it out, to the same end.
    /// </summary>
    private static bool IsCache(FieldInfo field) =>
        field.IsPrivate
        && !field.FieldType.IsValueType
        && field.GetRequiredCustomModifiers().Contains(typeof(IsVolatile));

    private static bool IsChangeable(Type type) =>
        !IsReadOnly(type)
        && type.GetInterfaces()
            .Append(type)
            .Any(part =>
                part.IsGenericType && part.GetGenericTypeDefinition() == typeof(ICollection<>)
            );

    // The framework's read-only collections implement the changeable interface too, and throw.
    private static bool IsReadOnly(Type type) =>
        type.Name.StartsWith("ReadOnly", StringComparison.Ordinal)
        || type.Name.StartsWith("Immutable", StringComparison.Ordinal)
        || type.Name.StartsWith("Frozen", StringComparison.Ordinal);

    private static IEnumerable<Type> OwnBases(Type type)
    {
        for (
            var part = type;
            part is not null && part.Assembly == type.Assembly;
            part = part.BaseType
        )
            yield return part;
    }
}
