namespace WireCheck.Sheets;

/// <summary>One step of the first connection.</summary>
/// <param name="Do">What is done.</param>
/// <param name="See">What is seen then, with the voltage where the step makes one.</param>
internal sealed record ConnectionStep(string Do, string See);
