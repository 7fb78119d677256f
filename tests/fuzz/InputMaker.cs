using System.Text;

namespace WireCheck.Fuzz;

/// <summary>Makes the inputs of a seed: of ten, six change the description, two the rule set beside it and two the template.</summary>
internal sealed class InputMaker(SeedTexts seeds, int seed)
{
    private const string Box = "box.yaml";
    private const string Template = "mine.template";
    private const int MostChanges = 4;

    private static readonly string[] Formats = ["text", "markdown", "html", "json", "sarif"];

    private readonly NodeMutation _nodes = new(seeds);

    /// <summary>The input of that number, which does not depend on those before it.</summary>
    internal FuzzInput Make(int number)
    {
        Random random = new(unchecked((seed * 1_000_003) + number));
        return (number % 10) switch
        {
            < 6 => Description(number, random),
            < 8 => RuleSet(number, random),
            _ => OwnTemplate(number, random),
        };
    }

    private FuzzInput Description(int number, Random random)
    {
        // The examples are four times as large as the boxes of the rules' cases and take as much longer; one in ten is enough of them.
        string text = random.Next(10) switch
        {
            0 => Pick(seeds.Broken, random),
            1 => Pick(seeds.Examples, random),
            _ => Pick(seeds.Descriptions, random),
        };
        byte[] damaged = random.Next(10) switch
        {
            < 1 => Bytes(text, seeds.Descriptions, random),
            < 3 => Encoding.UTF8.GetBytes(Tokens(text, random)),
            _ => Encoding.UTF8.GetBytes(_nodes.Change(text, random.Next(1, random.Next(1, MostChanges + 1) + 1), random)),
        };
        return new FuzzInput(
            number,
            new Dictionary<string, byte[]> { [Box] = damaged, [SeedTexts.House] = Encoding.UTF8.GetBytes(seeds.RuleSets[0]) },
            [Box, "--format", Pick(Formats, random)]);
    }

    private FuzzInput RuleSet(int number, Random random)
    {
        string text = random.Next(2) == 0 ? seeds.RuleSets[0] : Pick(seeds.RuleSets, random);
        byte[] damaged = random.Next(10) switch
        {
            < 1 => Bytes(text, seeds.RuleSets, random),
            < 6 => Encoding.UTF8.GetBytes(Tokens(text, random)),
            _ => Encoding.UTF8.GetBytes(_nodes.Change(text, random.Next(1, MostChanges + 1), random)),
        };
        return new FuzzInput(
            number,
            new Dictionary<string, byte[]> { [Box] = Encoding.UTF8.GetBytes(seeds.Workshop), [SeedTexts.House] = damaged },
            [Box, "--format", Pick(Formats, random)]);
    }

    private FuzzInput OwnTemplate(int number, Random random)
    {
        string text = Pick(seeds.Templates, random);
        byte[] damaged = random.Next(10) < 2 ? Bytes(text, seeds.Templates, random) : Encoding.UTF8.GetBytes(Tokens(text, random));
        return new FuzzInput(
            number,
            new Dictionary<string, byte[]>
            {
                [Box] = Encoding.UTF8.GetBytes(seeds.Workshop), [SeedTexts.House] = Encoding.UTF8.GetBytes(seeds.RuleSets[0]), [Template] = damaged,
            },
            [Box, "--template", Template, "--format", Formats[random.Next(3)]]);
    }

    private static byte[] Bytes(string text, IReadOnlyList<string> others, Random random)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(text);
        byte[] other = Encoding.UTF8.GetBytes(Pick(others, random));
        for (int change = random.Next(1, MostChanges + 1); change > 0; change--)
        {
            bytes = ByteMutation.Change(bytes, other, random);
        }

        return bytes;
    }

    private string Tokens(string text, Random random)
    {
        for (int change = random.Next(1, MostChanges + 1); change > 0; change--)
        {
            text = TokenMutation.Change(text, seeds.Words, random);
        }

        return text;
    }

    private static string Pick(IReadOnlyList<string> texts, Random random) => texts[random.Next(texts.Count)];
}
