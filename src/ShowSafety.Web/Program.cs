using ShowSafety.Web.Assessments;
using ShowSafety.Web.Contract;
using ShowSafety.Web.Health;
using ShowSafety.Web.Hosting;
using ShowSafety.Web.Levels;
using ShowSafety.Web.Materials;
using ShowSafety.Web.Outputs;
using ShowSafety.Web.PlanFormat;
using ShowSafety.Web.Plans;
using ShowSafety.Web.Points;
using ShowSafety.Web.RuleSets;
using ShowSafety.Web.Sums;
using ShowSafety.Web.Templates;

var builder = LocalHost.CreateBuilder(args);
builder.Services.AddProblemDetails();
builder.Services.AddServiceDescription();
builder.Services.ConfigureHttpJsonOptions(json => Json.BeStrict(json.SerializerOptions));
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddSingleton<Workbench>();
builder.Services.AddSingleton<TemplateLibrary>();
builder.Services.AddPlanStore();

var app = builder.Build();
app.UseSecurityHeaders();
app.UseExceptionHandler();
app.UseProblemForEmptyErrors();
app.UsePage();
app.UseRouting();

app.MapHealth();
app.MapOpenApi();
app.MapTemplates();
app.MapPlanSchema();
app.MapRuleSets();
app.MapMaterials();
app.MapSums();
app.MapAssessments();
app.MapPoints();
app.MapLevels();
app.MapOutputs();
app.MapPlans();
app.MapVersions();

return await app.RunAndSayAddressAsync(Console.Out, Console.Error);
