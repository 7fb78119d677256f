namespace WireCheck.Cli.Tests;

/// <summary>The packages, installed and used as a user would: from a folder of packages and nothing else.</summary>
public sealed class PackagedToolTests(PackedTool packed) : IClassFixture<PackedTool>
{
    private static readonly string[] Boxes = ["market-stall-12v.yaml", "first-draft-12v.yaml"];

    [Fact]
    public void The_tool_installs_from_its_package_into_an_empty_folder_and_checks_an_example()
    {
        string[] made = [.. Directory.EnumerateFiles(packed.Packages).Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal)];
        made.Length.ShouldBe(2);
        made.ShouldAllBe(name => name.EndsWith(".nupkg", StringComparison.Ordinal));
        string example = Repository.File("examples", "market-stall-12v.yaml");

        string answer = PackedTool.Sound(packed.Folder, InstalledIn("alone"), "check", example, "--today", "2027-03-01");

        answer.ShouldBe(ProgramRun.Of("check", example, "--today", "2027-03-01").Output);
        answer.ShouldContain("PASSES");
    }

    /// <summary>The sample for a server is run here by its own lines; what only the server has (checkout, upload) is not.</summary>
    [Fact]
    public void The_steps_of_the_sample_workflow_install_the_tool_and_write_findings_at_the_lines_of_the_boxes()
    {
        string work = packed.Within("checkout");
        Directory.CreateSymbolicLink(Path.Combine(work, "packages"), packed.Packages);
        Copy(Boxes, packed.Within("checkout/boxes"));
        string[] steps = [.. File.ReadLines(Repository.File("examples", "use", "wiring.yml"))
            .Select(line => line.Trim()).Where(line => line.StartsWith("- run: ", StringComparison.Ordinal)).Select(line => line[7..])];

        (int Exit, string Output, string Error)[] ends = [.. steps.Select(step => PackedTool.Run(work, null, "bash", "-e", "-c", step))];

        ends.Select(end => end.Exit).ShouldBe([0, 1], ends[^1].Error);
        string sarif = File.ReadAllText(Path.Combine(work, "wiring.sarif"));
        sarif.ShouldContain("boxes/first-draft-12v.yaml");
        sarif.ShouldContain("startLine");
    }

    [Fact]
    public void The_sample_hook_lets_a_sound_box_pass_and_refuses_one_with_a_danger()
    {
        string work = packed.Within("repository");
        string tools = Path.GetDirectoryName(InstalledIn("hooked"))!;
        Git(tools, work, "init", "--quiet").Exit.ShouldBe(0);
        string hook = Path.Combine(work, ".git", "hooks", "pre-commit");
        File.Copy(Repository.File("examples", "use", "pre-commit"), hook, overwrite: true);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(hook, (UnixFileMode)0b111_101_101);
        }

        Copy(["market-stall-12v.yaml"], work);
        (int Exit, string Output, string Error) sound = Commit(tools, work);
        Copy(["first-draft-12v.yaml"], work);
        (int Exit, string Output, string Error) dangerous = Commit(tools, work);

        sound.Exit.ShouldBe(0, sound.Output + sound.Error);
        dangerous.Exit.ShouldNotBe(0);
        dangerous.Error.ShouldContain("The commit is refused.");
        Git(tools, work, "rev-list", "--count", "HEAD").Output.Trim().ShouldBe("1");
    }

    private string InstalledIn(string name)
    {
        string tools = Path.Combine(packed.Folder, name);
        PackedTool.Sound(packed.Folder, "dotnet", "tool", "install", "WireCheck.Cli", "--tool-path", tools);
        return Path.Combine(tools, OperatingSystem.IsWindows() ? "wirecheck.exe" : "wirecheck");
    }

    private static void Copy(string[] examples, string folder)
    {
        foreach (string name in examples)
        {
            File.Copy(Repository.File("examples", name), Path.Combine(folder, name));
        }
    }

    private static (int Exit, string Output, string Error) Commit(string tools, string work)
    {
        Git(tools, work, "add", "--all").Exit.ShouldBe(0);
        return Git(tools, work, "-c", "user.name=builder", "-c", "user.email=builder@example.org", "commit", "--quiet", "-m", "Change the box");
    }

    private static (int Exit, string Output, string Error) Git(string tools, string work, params string[] arguments) =>
        PackedTool.Run(work, tools, "git", arguments);
}
