using System.Reflection;
using System.Reflection.Emit;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace Stillwall.Tests.Rules;

/// <summary>That one type of a built assembly uses another: both with their namespaces, a nested type by the type it stands in.</summary>
/// <param name="By">The type whose declaration or code it is.</param>
/// <param name="In">Its member; empty for the declaration itself.</param>
/// <param name="Of">The type that is used, or whose member is.</param>
internal sealed record BuiltUse(string By, string In, string Of);

/// <summary>
/// Reads a built assembly for every use of a type: in declarations, signatures, attributes and constraints, and in the bodies of methods, lambdas,
/// iterators and all else that the compiler made of the sources. However a name was written, here it is whole. What leaves no trace is what the
/// compiler puts in by value: constants, members of an enumeration, <c>nameof</c>.
/// </summary>
internal sealed class BuiltUses
{
    private static readonly Dictionary<int, OpCode> OpCodesByValue = typeof(OpCodes)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (OpCode)f.GetValue(null)!)
        .ToDictionary(code => (int)(ushort)code.Value);

    private readonly PEReader file;
    private readonly MetadataReader reader;
    private readonly TypeNames names;
    private readonly HashSet<BuiltUse> found = [];
    private string by = "",
        member = "";

    private BuiltUses(PEReader file)
    {
        this.file = file;
        reader = file.GetMetadataReader();
        names = new TypeNames(reader);
    }

    internal static IReadOnlyCollection<BuiltUse> Of(Assembly assembly)
    {
        using var stream = File.OpenRead(assembly.Location);
        using var file = new PEReader(stream);
        var uses = new BuiltUses(file);
        foreach (var handle in uses.reader.TypeDefinitions)
        {
            uses.ReadType(handle);
        }

        return uses.found;
    }

    private void ReadType(TypeDefinitionHandle handle)
    {
        var type = reader.GetTypeDefinition(handle);
        (by, member) = (names.Of(handle), "");
        Take(type.BaseType);
        Take(type.GetCustomAttributes());
        Take(type.GetGenericParameters());
        foreach (var implemented in type.GetInterfaceImplementations())
        {
            Take(reader.GetInterfaceImplementation(implemented).Interface);
        }

        foreach (var field in type.GetFields().Select(reader.GetFieldDefinition))
        {
            member = reader.GetString(field.Name);
            Take(field.DecodeSignature(names, null));
            Take(field.GetCustomAttributes());
        }

        foreach (var property in type.GetProperties().Select(reader.GetPropertyDefinition))
        {
            member = reader.GetString(property.Name);
            Take(property.DecodeSignature(names, null));
            Take(property.GetCustomAttributes());
        }

        foreach (var happening in type.GetEvents().Select(reader.GetEventDefinition))
        {
            member = reader.GetString(happening.Name);
            Take(happening.Type);
            Take(happening.GetCustomAttributes());
        }

        foreach (var method in type.GetMethods().Select(reader.GetMethodDefinition))
        {
            member = reader.GetString(method.Name);
            ReadMethod(method);
        }
    }

    private void ReadMethod(MethodDefinition method)
    {
        Take(method.DecodeSignature(names, null));
        Take(method.GetCustomAttributes());
        Take(method.GetGenericParameters());
        foreach (var parameter in method.GetParameters())
        {
            Take(reader.GetParameter(parameter).GetCustomAttributes());
        }

        if (method.RelativeVirtualAddress == 0)
        {
            return;
        }

        var body = file.GetMethodBody(method.RelativeVirtualAddress);
        if (!body.LocalSignature.IsNil)
        {
            Take(body.LocalSignature);
        }

        foreach (var region in body.ExceptionRegions)
        {
            Take(region.CatchType);
        }

        var code = body.GetILReader();
        while (code.RemainingBytes > 0)
        {
            ReadInstruction(ref code);
        }
    }

    private void ReadInstruction(ref BlobReader code)
    {
        var value = (int)code.ReadByte();
        if (value == 0xFE)
        {
            value = (value << 8) | code.ReadByte();
        }

        switch (OpCodesByValue[value].OperandType)
        {
            case OperandType.InlineField or OperandType.InlineMethod or OperandType.InlineTok or OperandType.InlineType or OperandType.InlineSig:
                Take(MetadataTokens.EntityHandle(code.ReadInt32()));
                break;
            case OperandType.InlineSwitch:
                var targets = code.ReadInt32();
                code.Offset += 4 * targets;
                break;
            case OperandType.InlineBrTarget or OperandType.InlineI or OperandType.InlineString or OperandType.ShortInlineR:
                code.Offset += 4;
                break;
            case OperandType.InlineI8 or OperandType.InlineR:
                code.Offset += 8;
                break;
            case OperandType.InlineVar:
                code.Offset += 2;
                break;
            case OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar:
                code.Offset++;
                break;
            case OperandType.InlineNone:
                break;
            case var other:
                throw new NotSupportedException($"{member} of {by}: an instruction with {other}");
        }
    }

    private void Take(EntityHandle handle)
    {
        if (handle.IsNil)
        {
            return;
        }

        switch (handle.Kind)
        {
            case HandleKind.TypeDefinition or HandleKind.TypeReference or HandleKind.TypeSpecification:
                Take(names.Whole(handle));
                break;
            case HandleKind.FieldDefinition:
                Take(reader.GetFieldDefinition((FieldDefinitionHandle)handle).GetDeclaringType());
                break;
            case HandleKind.MethodDefinition:
                Take(reader.GetMethodDefinition((MethodDefinitionHandle)handle).GetDeclaringType());
                break;
            case HandleKind.MemberReference:
                TakeReference(reader.GetMemberReference((MemberReferenceHandle)handle));
                break;
            case HandleKind.MethodSpecification:
                var special = reader.GetMethodSpecification((MethodSpecificationHandle)handle);
                Take(special.Method);
                Take(special.DecodeSignature(names, null).SelectMany(n => n));
                break;
            case HandleKind.StandaloneSignature:
                var alone = reader.GetStandaloneSignature((StandaloneSignatureHandle)handle);
                if (alone.GetKind() == StandaloneSignatureKind.LocalVariables)
                {
                    Take(alone.DecodeLocalSignature(names, null).SelectMany(n => n));
                }
                else
                {
                    Take(alone.DecodeMethodSignature(names, null));
                }

                break;
            default:
                throw new NotSupportedException($"{member} of {by}: a {handle.Kind}");
        }
    }

    private void TakeReference(MemberReference reference)
    {
        Take(reference.Parent);
        if (reference.GetKind() == MemberReferenceKind.Method)
        {
            Take(reference.DecodeMethodSignature(names, null));
        }
        else
        {
            Take(reference.DecodeFieldSignature(names, null));
        }
    }

    private void Take(CustomAttributeHandleCollection attributes)
    {
        foreach (var attribute in attributes.Select(reader.GetCustomAttribute))
        {
            Take(attribute.Constructor);
            var value = attribute.DecodeValue(names);
            foreach (var argument in value.FixedArguments.Select(a => (a.Type, a.Value)).Concat(value.NamedArguments.Select(a => (a.Type, a.Value))))
            {
                Take(argument.Type);
                Take(TypeNames.Named(argument.Value));
            }
        }
    }

    private void Take(GenericParameterHandleCollection parameters)
    {
        foreach (var parameter in parameters.Select(reader.GetGenericParameter))
        {
            Take(parameter.GetCustomAttributes());
            foreach (var constraint in parameter.GetConstraints())
            {
                Take(reader.GetGenericParameterConstraint(constraint).Type);
            }
        }
    }

    private void Take(MethodSignature<IReadOnlyList<string>> signature) => Take(signature.ParameterTypes.SelectMany(n => n).Concat(signature.ReturnType));

    private void Take(IEnumerable<string> types) => found.UnionWith(types.Select(of => new BuiltUse(by, member, of)));
}
