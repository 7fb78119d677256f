using WireCheck.Bench;

Dictionary<string, Action> figures = new()
{
    ["factor"] = FactorFigure.Print,
};
foreach ((string name, Action print) in figures)
{
    if (args.Length == 0 || args.Contains(name))
    {
        print();
    }
}

return 0;
