using WireCheck.Text;

namespace WireCheck.Tests.Text;

public sealed class SourceFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("wirecheck-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Text_with_or_without_a_byte_order_mark_is_read()
    {
        Load([0xEF, 0xBB, 0xBF, (byte)'a', (byte)':']).Text.ShouldBe("a:");
        Load([(byte)'a', (byte)':']).Text.ShouldBe("a:");
    }

    [Fact]
    public void Binary_data_is_named() =>
        Load([1, 2, 0, 3]).Problem.ShouldBe(":1:1: this is not a text file: it holds binary data");

    [Fact]
    public void Bytes_that_are_not_UTF_8_are_named_with_their_line() =>
        Load([(byte)'a', (byte)'\n', 0xE9, (byte)'\n']).Problem.ShouldBe(":2:1: this line is not UTF-8 text; save the file as UTF-8");

    [Fact]
    public void A_file_above_the_limit_is_not_read()
    {
        YamlLimits small = new(Characters: 10, Depth: 5, Nodes: 5);

        Load(new byte[41], small).Problem.ShouldBe(":1:1: the file is too large: at most 10 characters are read");
    }

    [Fact]
    public void A_folder_and_a_missing_file_are_named()
    {
        ProblemList problems = new();

        SourceFile.Load(_folder, problems).ShouldBeNull();
        SourceFile.Load(Path.Combine(_folder, "none.yaml"), problems).ShouldBeNull();
        problems.InOrder().Select(p => p.Message).ShouldBe(["this is a folder, not a file", "there is no such file"]);
    }

    [Fact]
    public void A_device_without_an_end_is_not_read_forever()
    {
        if (!File.Exists("/dev/zero"))
        {
            return;
        }

        ProblemList problems = new();
        SourceFile.Load("/dev/zero", new YamlLimits(1000, 5, 5), problems).ShouldBeNull();
        problems.InOrder().Single().Message.ShouldBe("the file is too large: at most 1000 characters are read");
    }

    private (string? Text, string? Problem) Load(byte[] bytes, YamlLimits? limits = null)
    {
        string file = Path.Combine(_folder, "file.yaml");
        File.WriteAllBytes(file, bytes);
        ProblemList problems = new();
        string? text = SourceFile.Load(file, limits ?? YamlLimits.Default, problems);
        return (text, problems.InOrder().SingleOrDefault()?.ToString()[file.Length..]);
    }
}
