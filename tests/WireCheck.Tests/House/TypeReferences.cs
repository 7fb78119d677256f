using System.Reflection;
using System.Reflection.Emit;

namespace WireCheck.Tests.House;

/// <summary>
/// The types that a type names: what it derives from, what its members are declared with, and what the bodies of its
/// methods call. A constant leaves no trace, since the compiler copies it.
/// </summary>
internal static class TypeReferences
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.NonPublic
        | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    private static readonly Dictionary<short, OpCode> Codes = typeof(OpCodes).GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (OpCode)f.GetValue(null)!).ToDictionary(code => code.Value);

    /// <summary>Every type named, each once; of a generic or array type its pieces.</summary>
    internal static IReadOnlySet<Type> Of(Type type)
    {
        HashSet<Type> found = [];
        Add(found, type.BaseType);
        Array.ForEach(type.GetInterfaces(), i => Add(found, i));
        foreach (FieldInfo field in type.GetFields(Declared))
        {
            Add(found, field.FieldType);
        }

        foreach (MethodBase method in type.GetMethods(Declared).Concat<MethodBase>(type.GetConstructors(Declared)))
        {
            AddSignature(found, method);
            AddBody(found, method);
        }

        return found;
    }

    private static void Add(HashSet<Type> found, Type? type)
    {
        if (type is null || type.IsGenericParameter)
        {
            return;
        }

        if (type.HasElementType)
        {
            Add(found, type.GetElementType());
            return;
        }

        Array.ForEach(type.GetGenericArguments(), argument => Add(found, argument));
        found.Add(type.IsGenericType ? type.GetGenericTypeDefinition() : type);
    }

    private static void AddSignature(HashSet<Type> found, MethodBase method)
    {
        Add(found, (method as MethodInfo)?.ReturnType);
        Array.ForEach(method.GetParameters(), p => Add(found, p.ParameterType));
        if (method.IsGenericMethod)
        {
            Array.ForEach(method.GetGenericArguments(), argument => Add(found, argument));
        }
    }

    private static void AddBody(HashSet<Type> found, MethodBase method)
    {
        if (method.GetMethodBody() is not { } body)
        {
            return;
        }

        foreach (LocalVariableInfo local in body.LocalVariables)
        {
            Add(found, local.LocalType);
        }

        foreach (int token in Tokens(body.GetILAsByteArray()!))
        {
            switch (Resolve(method, token))
            {
                case Type type:
                    Add(found, type);
                    break;
                case FieldInfo field:
                    Add(found, field.DeclaringType);
                    Add(found, field.FieldType);
                    break;
                case MethodBase called:
                    Add(found, called.DeclaringType);
                    AddSignature(found, called);
                    break;
            }
        }
    }

    private static MemberInfo? Resolve(MethodBase method, int token) => method.Module.ResolveMember(
        token,
        method.DeclaringType is { IsGenericType: true } owner ? owner.GetGenericArguments() : null,
        method.IsGenericMethod ? method.GetGenericArguments() : null);

    /// <summary>The tokens of members and types in a method body (ECMA-335, partition III).</summary>
    private static IEnumerable<int> Tokens(byte[] body)
    {
        int at = 0;
        while (at < body.Length)
        {
            // Codes of two bytes begin with FE.
            OpCode code = body[at] == 0xFE ? Codes[unchecked((short)(0xFE00 | body[at + 1]))] : Codes[body[at]];
            at += code.Size;
            if (code.OperandType is OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineType or OperandType.InlineTok)
            {
                yield return BitConverter.ToInt32(body, at);
            }

            at += OperandSize(code.OperandType, body, at);
        }
    }

    private static int OperandSize(OperandType operand, byte[] body, int at) => operand switch
    {
        OperandType.InlineNone => 0,
        OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
        OperandType.InlineVar => 2,
        OperandType.InlineI8 or OperandType.InlineR => 8,
        OperandType.InlineSwitch => 4 + (4 * BitConverter.ToInt32(body, at)),
        _ => 4,
    };
}
