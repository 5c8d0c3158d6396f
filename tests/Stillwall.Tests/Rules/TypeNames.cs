using System.Collections.Immutable;
using System.Reflection.Metadata;

namespace Stillwall.Tests.Rules;

/// <summary>All named types within a type as metadata write it: of <c>List&lt;Plate[]&gt;</c> both the list and the plate.</summary>
internal sealed class TypeNames(MetadataReader reader)
    : ISignatureTypeProvider<IReadOnlyList<string>, object?>,
        ICustomAttributeTypeProvider<IReadOnlyList<string>>
{
    /// <summary>Namespace and name of a defined type, after the type it stands in.</summary>
    internal string Of(TypeDefinitionHandle handle)
    {
        var type = reader.GetTypeDefinition(handle);
        var name = reader.GetString(type.Name);
        return type.GetDeclaringType() is { IsNil: false } outer ? $"{Of(outer)}+{name}"
            : type.Namespace.IsNil ? name
            : $"{reader.GetString(type.Namespace)}.{name}";
    }

    /// <summary>The named types within one that is defined, referred to or put together.</summary>
    internal IReadOnlyList<string> Whole(EntityHandle handle) =>
        handle.Kind switch
        {
            HandleKind.TypeDefinition => [Of((TypeDefinitionHandle)handle)],
            HandleKind.TypeReference => [Of((TypeReferenceHandle)handle)],
            _ => reader.GetTypeSpecification((TypeSpecificationHandle)handle).DecodeSignature(this, null),
        };

    /// <summary>The types that the value of an attribute's argument names.</summary>
    internal static IEnumerable<string> Named(object? value) =>
        value switch
        {
            IReadOnlyList<string> types => types,
            ImmutableArray<CustomAttributeTypedArgument<IReadOnlyList<string>>> many => many.SelectMany(one => one.Type.Concat(Named(one.Value))),
            _ => [],
        };

    public IReadOnlyList<string> GetTypeFromDefinition(MetadataReader reader, TypeDefinitionHandle handle, byte rawTypeKind) => [Of(handle)];

    public IReadOnlyList<string> GetTypeFromReference(MetadataReader reader, TypeReferenceHandle handle, byte rawTypeKind) => [Of(handle)];

    public IReadOnlyList<string> GetTypeFromSpecification(MetadataReader reader, object? genericContext, TypeSpecificationHandle handle, byte rawTypeKind) =>
        Whole(handle);

    public IReadOnlyList<string> GetGenericInstantiation(IReadOnlyList<string> genericType, ImmutableArray<IReadOnlyList<string>> typeArguments) =>
        [.. genericType, .. typeArguments.SelectMany(t => t)];

    public IReadOnlyList<string> GetFunctionPointerType(MethodSignature<IReadOnlyList<string>> signature) =>
        [.. signature.ReturnType, .. signature.ParameterTypes.SelectMany(t => t)];

    public IReadOnlyList<string> GetModifiedType(IReadOnlyList<string> modifier, IReadOnlyList<string> unmodifiedType, bool isRequired) =>
        [.. modifier, .. unmodifiedType];

    public IReadOnlyList<string> GetArrayType(IReadOnlyList<string> elementType, ArrayShape shape) => elementType;

    public IReadOnlyList<string> GetSZArrayType(IReadOnlyList<string> elementType) => elementType;

    public IReadOnlyList<string> GetByReferenceType(IReadOnlyList<string> elementType) => elementType;

    public IReadOnlyList<string> GetPointerType(IReadOnlyList<string> elementType) => elementType;

    public IReadOnlyList<string> GetPinnedType(IReadOnlyList<string> elementType) => elementType;

    public IReadOnlyList<string> GetPrimitiveType(PrimitiveTypeCode typeCode) => [];

    public IReadOnlyList<string> GetGenericMethodParameter(object? genericContext, int index) => [];

    public IReadOnlyList<string> GetGenericTypeParameter(object? genericContext, int index) => [];

    public IReadOnlyList<string> GetSystemType() => ["System.Type"];

    public bool IsSystemType(IReadOnlyList<string> type) => type is ["System.Type"];

    // As a text: the whole name, its assembly behind a comma where it is another's, type arguments in brackets.
    public IReadOnlyList<string> GetTypeFromSerializedName(string name) =>
        [.. name.Split(['[', ']', ','], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Where(n => !n.Contains('='))];

    public PrimitiveTypeCode GetUnderlyingEnumType(IReadOnlyList<string> type)
    {
        var named = AppDomain.CurrentDomain.GetAssemblies().Select(a => a.GetType(type[0])).First(t => t is { IsEnum: true })!;
        return Enum.Parse<PrimitiveTypeCode>(Type.GetTypeCode(named).ToString());
    }

    private string Of(TypeReferenceHandle handle)
    {
        var type = reader.GetTypeReference(handle);
        var name = reader.GetString(type.Name);
        return type.ResolutionScope.Kind == HandleKind.TypeReference ? $"{Of((TypeReferenceHandle)type.ResolutionScope)}+{name}"
            : type.Namespace.IsNil ? name
            : $"{reader.GetString(type.Namespace)}.{name}";
    }
}
