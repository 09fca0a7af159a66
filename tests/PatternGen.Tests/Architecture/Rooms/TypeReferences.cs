using Mono.Cecil;
using Mono.Cecil.Cil;

namespace PatternGen.Tests.Architecture.Rooms;

/// <summary>Every type that a type mentions: in its shape, its signatures, its attributes and its code.</summary>
internal static class TypeReferences
{
    /// <summary>Lists what a type and the types nested in it mention within their own assembly.</summary>
    public static IEnumerable<TypeDefinition> From(TypeDefinition type) =>
        Mentioned(type).SelectMany(Parts).OfType<TypeDefinition>().Distinct();

    private static IEnumerable<TypeReference?> Mentioned(TypeDefinition type) =>
        [
            type.BaseType,
            .. type.Interfaces.Select(implemented => implemented.InterfaceType),
            .. Constraints(type),
            .. Attributes(type),
            .. type.Fields.Select(field => field.FieldType),
            .. type.Fields.SelectMany(Attributes),
            .. type.Properties.SelectMany(Attributes),
            .. type.Events.SelectMany(Attributes),
            .. type.Methods.SelectMany(InMethod),
            .. type.NestedTypes.SelectMany(Mentioned),
        ];

    private static IEnumerable<TypeReference?> InMethod(MethodDefinition method) =>
        [
            .. Signature(method),
            .. Constraints(method),
            .. Attributes(method),
            .. method.Parameters.SelectMany(Attributes),
            .. method.Overrides.Select(overridden => overridden.DeclaringType),
            .. method.HasBody ? InBody(method.Body) : [],
        ];

    private static IEnumerable<TypeReference?> InBody(MethodBody body) =>
        [
            .. body.Variables.Select(variable => variable.VariableType),
            .. body.ExceptionHandlers.Select(handler => handler.CatchType),
            .. body.Instructions.SelectMany(instruction => InOperand(instruction.Operand)),
        ];

    private static IEnumerable<TypeReference?> InOperand(object? operand) =>
        operand switch
        {
            TypeReference type => [type],
            FieldReference field => [field.DeclaringType, field.FieldType],
            GenericInstanceMethod method => [.. method.GenericArguments, .. Signature(method)],
            MethodReference method => Signature(method),
            _ => [],
        };

    private static IEnumerable<TypeReference?> Signature(MethodReference method) =>
        [
            method.DeclaringType,
            method.ReturnType,
            .. method.Parameters.Select(parameter => parameter.ParameterType),
        ];

    private static IEnumerable<TypeReference?> Constraints(IGenericParameterProvider owner) =>
        owner.GenericParameters.SelectMany(parameter =>
            parameter.Constraints.Select(constraint => constraint.ConstraintType)
        );

    private static IEnumerable<TypeReference?> Attributes(ICustomAttributeProvider owner) =>
        owner.CustomAttributes.SelectMany(attribute =>
            attribute
                .ConstructorArguments.Concat(attribute.Properties.Select(named => named.Argument))
                .Select(argument => argument.Value as TypeReference)
                .Append(attribute.AttributeType)
        );

    /// <summary>Takes lists, arrays, references and modifiers apart into the plain types that they name.</summary>
    private static IEnumerable<TypeReference> Parts(TypeReference? type) =>
        type switch
        {
            null or GenericParameter => [],
            GenericInstanceType generic =>
            [
                .. Parts(generic.ElementType),
                .. generic.GenericArguments.SelectMany(Parts),
            ],
            IModifierType modified =>
            [
                .. Parts(modified.ElementType),
                .. Parts(modified.ModifierType),
            ],
            FunctionPointerType pointer =>
            [
                .. Parts(pointer.ReturnType),
                .. pointer.Parameters.SelectMany(parameter => Parts(parameter.ParameterType)),
            ],
            TypeSpecification wrapped => Parts(wrapped.ElementType),
            _ => [type],
        };
}
