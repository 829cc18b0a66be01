using System.Globalization;
using ShowSafety.PageSpeed;

if (args.Length != 1 || !Uri.TryCreate(args[0], UriKind.Absolute, out var address))
{
    await Console.Error.WriteLineAsync("Give the address of a running service, for example http://127.0.0.1:5081");
    return 2;
}

Console.WriteLine(
    "| template | movement to redrawn zones p50 | p95 | answers | before request p50/p95 | request p50/p95 | assessor p50/p95 | drawing p50/p95 |"
);
Console.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- |");
await using var dragging = await Dragging.OpenAsync(address);
foreach (var template in await dragging.TemplatesAsync())
{
    var times = await dragging.DragBenchAsync(template);
    var whole = times.MovementToZones().ToArray();
    Console.WriteLine(
        string.Create(
            CultureInfo.InvariantCulture,
            $"| {template} | {Spread.Of(whole).P50:0} ms | {Spread.Of(whole).P95:0} ms | {times.Answers.Count} | {Of(a => a.BeforeRequest)} | {Of(a => a.RequestWithoutAssessor)} | {Of(a => a.Assessor)} | {Of(a => a.Drawing)} |"
        )
    );

    string Of(Func<DrawnAnswer, double> part) => Spread.Of([.. times.Answers.Select(part)]).ToString();
}
return 0;
