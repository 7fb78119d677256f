namespace WireCheck.Cli;

/// <summary>What the program tells the shell; each value means one thing.</summary>
internal enum ExitCode
{
    /// <summary>The command did what was asked; of a check: nothing was found at or above the threshold.</summary>
    Clean = 0,

    /// <summary>A check found something at or above the threshold of <c>--fail-on</c>.</summary>
    Found = 1,

    /// <summary>A description, a rule set or the command line is wrong; what and where is on standard error.</summary>
    WrongInput = 2,

    /// <summary>The tool itself failed.</summary>
    ToolFailed = 3,
}
