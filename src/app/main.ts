import "./style/tokens.css";
import "./shell/app.ts";
