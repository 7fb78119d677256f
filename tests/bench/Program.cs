using WireCheck.Bench;

Dictionary<string, Action> figures = new()
{
    ["box"] = BoxFigure.Print,
    ["flagship"] = FlagshipFigure.Print,
    ["states"] = StatesFigure.Print,
    ["heat"] = HeatFigure.Print,
    ["memory"] = MemoryFigure.Print,
    ["start"] = StartFigure.Print,
    ["factor"] = FactorFigure.Print,
    ["faults"] = FaultsFigure.Print,
    ["ngspice"] = NgspiceFigure.Print,
};
if (args is ["answers"])
{
    AnswersCheck.Print();
    return 0;
}

foreach ((string name, Action print) in figures)
{
    if (args.Length == 0 || args.Contains(name))
    {
        print();
    }
}

return 0;
