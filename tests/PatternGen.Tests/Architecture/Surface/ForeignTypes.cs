using System.Reflection;
using System.Runtime.InteropServices;

namespace PatternGen.Tests.Architecture.Surface;

/// <summary>
/// Types of other packages in our signatures bind our users to those packages. One is meant: the SVG object model's
/// document.
/// </summary>
internal static class ForeignTypes
{
    private static readonly string[] Meant = ["Svg.SvgDocument"];

    public static IEnumerable<string> Violations(IEnumerable<Type> types) =>
        types.SelectMany(type =>
            Mentioned(type)
                .SelectMany(Parts)
                .Where(part => IsForeign(part, type.Assembly))
                .Distinct()
                .Select(part => $"{type.Name} shows {part.FullName}")
        );

    private static IEnumerable<Type?> Mentioned(Type type) =>
        [
            type.BaseType,
            .. type.GetInterfaces(),
            .. type.GetGenericArguments().SelectMany(Constraints),
            .. type.GetFields(Members.Declared).Where(IsShown).Select(field => field.FieldType),
            .. type.GetConstructors(Members.Declared).Where(IsShown).SelectMany(ParameterTypes),
            .. type.GetMethods(Members.Declared).Where(IsShown).SelectMany(InMethod),
        ];

    private static IEnumerable<Type> InMethod(MethodInfo method) =>
        [
            method.ReturnType,
            .. ParameterTypes(method),
            .. method.GetGenericArguments().SelectMany(Constraints),
        ];

    private static IEnumerable<Type> ParameterTypes(MethodBase method) =>
        method.GetParameters().Select(parameter => parameter.ParameterType);

    private static IEnumerable<Type> Constraints(Type argument) =>
        argument.IsGenericParameter ? argument.GetGenericParameterConstraints() : [];

    private static bool IsShown(FieldInfo field) =>
        field.IsPublic || field.IsFamily || field.IsFamilyOrAssembly;

    private static bool IsShown(MethodBase method) =>
        method.IsPublic || method.IsFamily || method.IsFamilyOrAssembly;

    private static IEnumerable<Type> Parts(Type? type) =>
        type switch
        {
            null or { IsGenericParameter: true } => [],
            { HasElementType: true } => Parts(type.GetElementType()),
            { IsConstructedGenericType: true } =>
            [
                type.GetGenericTypeDefinition(),
                .. type.GenericTypeArguments.SelectMany(Parts),
            ],
            _ => [type],
        };

    private static bool IsForeign(Type type, Assembly ours) =>
        type.Assembly != ours
        && !Meant.Contains(type.FullName)
        && !type.Assembly.Location.StartsWith(
            RuntimeEnvironment.GetRuntimeDirectory(),
            StringComparison.Ordinal
        );
}
