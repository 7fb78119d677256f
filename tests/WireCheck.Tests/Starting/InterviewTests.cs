using System.Globalization;
using WireCheck.Starting;

namespace WireCheck.Tests.Starting;

public sealed class InterviewTests
{
    [Fact]
    public void Empty_lines_take_what_stands_in_brackets()
    {
        (AnswerWords? words, string shown) = Ask(new AnswerWords(), "", "", "coolbox=45W", "", "", "", "");

        words.ShouldNotBeNull();
        words.Volts.ShouldBe("12");
        words.Capacity.ShouldBe("100 Ah");
        words.Loads.ShouldBe(["coolbox=45W"]);
        words.Usb.ShouldBeTrue();
        words.Inverter.ShouldBeNull();
        words.Charging.ShouldBe(["mains"]);
        shown.ShouldContain("Voltage of the bank: 12, 24 or 48 V? [12] ");
    }

    [Fact]
    public void A_wrong_answer_is_told_and_asked_again()
    {
        (AnswerWords? words, string shown) = Ask(new AnswerWords(), "36", "48", "", "", "no", "500 W", "urn=450W", "", "solar", "80 W");

        words!.Volts.ShouldBe("48");
        words.Usb.ShouldBeFalse();
        words.MainsLoads.ShouldBe(["urn=450W"]);
        words.Panel.ShouldBe("80 W");
        shown.ShouldContain("'36' is no voltage of a box; say 12, 24 or 48 V");
    }

    [Fact]
    public void What_was_said_on_the_command_line_is_not_asked()
    {
        (AnswerWords? words, string shown) = Ask(
            new AnswerWords { Volts = "24", Loads = ["lamp=10W"], Usb = true, Inverter = "300 W", MainsLoads = ["lamp2=10W"], Charging = ["vehicle"] }, "50 Ah");

        words!.Capacity.ShouldBe("50 Ah");
        shown.ShouldNotContain("Voltage");
    }

    [Fact]
    public void Answers_that_end_too_soon_give_none() => Ask(new AnswerWords(), "12").Words.ShouldBeNull();

    private static (AnswerWords? Words, string Shown) Ask(AnswerWords words, params string[] lines)
    {
        using StringReader input = new(string.Join('\n', lines) + "\n");
        using StringWriter output = new(CultureInfo.InvariantCulture);
        return (new Interview(input, output).Complete(words), output.ToString());
    }
}
