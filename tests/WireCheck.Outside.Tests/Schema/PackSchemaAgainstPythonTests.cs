using System.Diagnostics;

namespace WireCheck.Outside.Tests.Schema;

/// <summary>
/// The schema of descriptions under a validator that is not the one built in: Debian's python3-jsonschema,
/// which also holds the schema against its meta-schema (draft 7). The files are read by Debian's python3-yaml.
/// </summary>
public sealed class PackSchemaAgainstPythonTests
{
    /// <summary>Rules that an example brings along; it describes no box.</summary>
    private const string RuleSetOfAnExample = "examples/house-rules/house.yaml";

    private static readonly string Root = FindRoot();

    [Fact]
    public void Every_example_and_every_case_of_a_rule_fits_the_schema()
    {
        string[] files = [.. Yaml("examples"), .. Yaml("tests/WireCheck.Tests/Rules/Cases")];

        files.ShouldNotBeEmpty();
        Validate(files).ShouldBe("");
    }

    [Theory]
    [InlineData("bare-number", "'20' is not of type 'string'", "20 is not of type 'string'")]
    [InlineData("unknown-section", "'fuse', 'widgets' were unexpected", "")]
    [InlineData("negative-fuse", "'-5 A' does not match", "")]
    public void A_broken_description_is_refused_where_a_schema_can_tell(string name, string says, string orSays)
    {
        string told = Validate([Path.Combine(Root, "tests/WireCheck.Tests/Description/Broken", name + ".yaml")]);

        (told.Contains(says, StringComparison.Ordinal) || (orSays.Length > 0 && told.Contains(orSays, StringComparison.Ordinal)))
            .ShouldBeTrue(told);
    }

    private static IEnumerable<string> Yaml(string folder)
    {
        string path = Path.Combine(Root, folder);
        return Directory.Exists(path)
            ? Directory.GetFiles(path, "*.yaml", SearchOption.AllDirectories)
                .Where(file => file != Path.Combine(Root, RuleSetOfAnExample))
                .Order(StringComparer.Ordinal)
            : [];
    }

    private static string Validate(IEnumerable<string> files)
    {
        ProcessStartInfo start = new("python3") { RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(Path.Combine(Root, "tests/WireCheck.Outside.Tests/Schema/validate.py"));
        start.ArgumentList.Add(Path.Combine(Root, "schema/pack.schema.json"));
        foreach (string file in files)
        {
            start.ArgumentList.Add(file);
        }

        using Process python = Process.Start(start)!;
        Task<string> errors = python.StandardError.ReadToEndAsync();
        string output = python.StandardOutput.ReadToEnd();
        python.WaitForExit();
        python.ExitCode.ShouldBe(0, errors.Result);
        return output;
    }

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "WireCheck.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("the tests do not run inside the source tree");
    }
}
